import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { normalQuantile } from '../../../../src/core/stats/index.ts'
import {
  conformanceProbability,
  globalRisk,
  judgeLimit,
  usualRule,
  verdictOfAll,
} from '../../../../src/core/stats/judging/index.ts'

const near = (value: number, want: number, within: number): void =>
  expect(Math.abs(value - want), `${value} for ${want}`).toBeLessThan(within)

describe('probability of conformance', () => {
  test('breakdown of a diode: y −5.47 V, u 0.05 V, upper limit −5.40 V give Φ(1.4), 92 % (JCGM 106:2012, 7.4, from memory)', () => {
    near(
      conformanceProbability({ value: -5.47, standardUncertainty: 0.05 }, { lower: null, upper: -5.4 }),
      0.9192,
      5e-5,
    )
  })

  test.for([
    [0.8, 0.84],
    [0.9, 1.28],
    [0.95, 1.64],
    [0.99, 2.33],
    [0.999, 3.09],
  ])('%d at a distance of %d u from one limit (JCGM 106:2012, 7.4, table 1, from memory)', ([p, z]) => {
    near(normalQuantile(p), z, 0.006)
    near(
      conformanceProbability({ value: -normalQuantile(p), standardUncertainty: 1 }, { lower: null, upper: 0 }),
      p,
      1e-9,
    )
  })

  test('right on the limit it is one half; two sides take from each other', () => {
    expect(conformanceProbability({ value: 1, standardUncertainty: 0.1 }, { lower: null, upper: 1 })).toBe(0.5)
    near(conformanceProbability({ value: 0, standardUncertainty: 1 }, { lower: -1, upper: 1 }), 0.682689, 1e-6)
  })

  test('without uncertainty it is yes or no; few degrees of freedom make the tail heavy', () => {
    expect(conformanceProbability({ value: 1, standardUncertainty: 0 }, { lower: 1, upper: 2 })).toBe(1)
    expect(conformanceProbability({ value: 2.1, standardUncertainty: 0 }, { lower: 1, upper: 2 })).toBe(0)
    // t with 4 degrees of freedom: P(t ≤ 2.7764) = 0.975 (standard table).
    const few = { value: 0, standardUncertainty: 1, degreesOfFreedom: 4 }
    near(conformanceProbability(few, { lower: null, upper: 2.776445 }), 0.975, 1e-6)
  })
})

describe('verdicts', () => {
  const upper = { lower: null, upper: 0.1 }
  const at = (value: number) => ({ value, standardUncertainty: 0.005 })

  test.for([
    { value: 0.09, want: 'pass' },
    { value: 0.0903, want: 'cannotTell' },
    { value: 0.1097, want: 'cannotTell' },
    { value: 0.11, want: 'fail' },
  ] as const)('guard band w = U: $value is $want under 0.1 with u 0.005', ({ value, want }) => {
    expect(judgeLimit(at(value), { tolerance: upper, rule: usualRule }).verdict).toBe(want)
  })

  test.for([
    { value: 0.1, want: 'pass' },
    { value: 0.10001, want: 'fail' },
  ] as const)('simple acceptance shares the risk: $value is $want', ({ value, want }) => {
    const judged = judgeLimit(at(value), { tolerance: upper, rule: { kind: 'simple' } })
    expect(judged.verdict).toBe(want)
    expect(judged.wrong).toBeGreaterThan(0.49)
  })

  test('w = U leaves at most 2.5 % to one limit (ILAC-G8:09/2019, table 1: under 2.5 % risk; from memory)', () => {
    const { verdict, wrong, passGuard } = judgeLimit(at(0.1 - 1.96 * 0.005), { tolerance: upper, rule: usualRule })
    expect(verdict).toBe('pass')
    near(wrong ?? 1, 0.025, 1e-4)
    near(passGuard, 1.96 * 0.005, 1e-5)
  })

  test('w = 0.83 U is about a risk of 5 % (ISO 14253-1 with k = 2: 1.64 u; from memory)', () => {
    const rule = { kind: 'guarded', factor: 0.83, coverage: 0.9545 } as const
    const { wrong } = judgeLimit(at(0.1 - 0.831 * 2 * 0.005), { tolerance: upper, rule })
    near(wrong ?? 1, 0.0483, 0.0005)
  })

  test.for([
    { mostRisk: 0.05, distance: 1.6449 },
    { mostRisk: 0.01, distance: 2.3263 },
  ])('a risk of $mostRisk wants $distance u', ({ mostRisk, distance }) => {
    const rule = { kind: 'risk', mostRisk } as const
    const judge = (value: number) => judgeLimit(at(value), { tolerance: upper, rule }).verdict
    expect(judge(0.1 - (distance + 0.001) * 0.005)).toBe('pass')
    expect(judge(0.1 - (distance - 0.001) * 0.005)).toBe('cannotTell')
    expect(judge(0.1 + (distance + 0.001) * 0.005)).toBe('fail')
  })

  test('an interval narrower than twice the guard band cannot be passed', () => {
    const narrow = { lower: 0.095, upper: 0.105 }
    expect(judgeLimit(at(0.1), { tolerance: narrow, rule: usualRule }).verdict).toBe('cannotTell')
  })

  test('many speeds widen the guard against a wrong fail alone (Šidák: 0.95^(1/10) two-sided is 2.7996)', () => {
    const many = judgeLimit(at(0.112), { tolerance: upper, rule: usualRule, speeds: 10 })
    expect(many.verdict).toBe('cannotTell')
    near(many.failGuard / 0.005, 2.7996, 1e-4)
    near(many.passGuard / 0.005, 1.96, 1e-4)
  })

  test('of several speeds each has to pass, and one fails all', () => {
    expect(verdictOfAll(['pass', 'pass'])).toBe('pass')
    expect(verdictOfAll(['pass', 'cannotTell'])).toBe('cannotTell')
    expect(verdictOfAll(['pass', 'cannotTell', 'fail'])).toBe('fail')
  })

  test.for([
    () => judgeLimit(at(0), { tolerance: { lower: null, upper: null }, rule: usualRule }),
    () => judgeLimit(at(0), { tolerance: { lower: 2, upper: 1 }, rule: usualRule }),
    () => judgeLimit(at(0), { tolerance: upper, rule: { kind: 'risk', mostRisk: 0.7 } }),
    () => judgeLimit(at(0), { tolerance: upper, rule: { kind: 'guarded', factor: Number.NaN, coverage: 0.95 } }),
    () => conformanceProbability({ value: 0, standardUncertainty: Number.NaN }, upper),
    () => verdictOfAll([]),
  ])('what cannot be is refused: %s', (call) => {
    expect(call).toThrow(RangeError)
  })
})

describe('risk over all items', () => {
  const standard = (limit: number, u: number, guard = 0) =>
    globalRisk({
      prior: { mean: 0, deviation: 1 },
      standardUncertainty: u,
      tolerance: { lower: -limit, upper: limit },
      passGuard: guard,
      failGuard: -guard,
    })

  // Deaver 1993, "How to maintain your confidence", figures as quoted in a public test suite of uncertainty software.
  test.for([
    { limit: 2, u: 0.25, guard: 0, pass: 0.008, fail: 0.015, within: 5e-4 },
    { limit: 2.5, u: 0.25, guard: 0, pass: 0.0025, fail: null, within: 1e-4 },
    { limit: 2, u: 0.5, guard: 2 - 2 * 0.91, pass: 0.008, fail: 0.066, within: 1e-3 },
  ])('limits ±$limit, u $u, guard $guard: wrong passes $pass, wrong fails $fail (Deaver 1993)', (given) => {
    // One acceptance limit: what is not passed is failed, so the guard of a fail is the other way round.
    const found = standard(given.limit, given.u, given.guard)
    near(found.wrongPass, given.pass, given.within)
    if (given.fail !== null) near(found.wrongFail, given.fail, given.within)
    near(found.cannotTell, 0, 1e-9)
  })

  test('resistors: 1500 Ω ± 0.2 Ω, items 0.12 Ω, u 0.04 Ω: about 10 % of items are out (JCGM 106:2012, 9.5.3.4, from memory)', () => {
    const found = globalRisk({
      prior: { mean: 1500, deviation: 0.12 },
      standardUncertainty: 0.04,
      tolerance: { lower: 1499.8, upper: 1500.2 },
      passGuard: 0,
      failGuard: 0,
    })
    near(found.nonconforming, 0.0956, 1e-4)
    expect(found.wrongPass).toBeLessThan(found.wrongFail)
  })

  test('a count of a million items agrees', () => {
    const setting = {
      prior: { mean: 0.09, deviation: 0.012 },
      standardUncertainty: 0.006,
      tolerance: { lower: null, upper: 0.1 },
      passGuard: 1.96 * 0.006,
      failGuard: 1.96 * 0.006,
    }
    const random = randomFrom(20261125)
    const count = { wrongPass: 0, wrongFail: 0, cannotTell: 0, nonconforming: 0 }
    const items = 1_000_000
    for (let i = 0; i < items; i++) {
      const item = 0.09 + 0.012 * random.normal()
      const read = item + 0.006 * random.normal()
      const good = item <= 0.1
      if (!good) count.nonconforming++
      if (read <= 0.1 - setting.passGuard) count.wrongPass += good ? 0 : 1
      else if (read > 0.1 + setting.failGuard) count.wrongFail += good ? 1 : 0
      else count.cannotTell++
    }
    const want = globalRisk(setting)
    for (const name of ['wrongPass', 'wrongFail', 'cannotTell', 'nonconforming'] as const) {
      const share = count[name] / items
      near(share, want[name], 4 * Math.sqrt(want[name] / items))
    }
  })
})

test('more friction never makes a verdict better, more uncertainty never makes one surer', () => {
  const order = { pass: 0, cannotTell: 1, fail: 2 } as const
  const rule = fc.constantFrom(usualRule, { kind: 'simple' } as const, { kind: 'risk', mostRisk: 0.05 } as const)
  const number = fc.double({ min: 0.001, max: 1, noNaN: true })
  fc.assert(
    fc.property(rule, fc.tuple(number, number, number), (one, [value, more, u]) => {
      const setting = { tolerance: { lower: null, upper: 0.5 }, rule: one }
      const judge = (at: number, standardUncertainty: number) =>
        judgeLimit({ value: at, standardUncertainty }, setting).verdict
      expect(order[judge(value + more, u)]).toBeGreaterThanOrEqual(order[judge(value, u)])
      if (judge(value, 2 * u) !== 'cannotTell') expect(judge(value, u)).toBe(judge(value, 2 * u))
    }),
  )
})
