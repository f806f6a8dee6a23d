import { describe, expect, test } from 'vitest'
import { type CompareAsk, compareSamples, type Replicate } from '../../../src/core/decide/index.ts'
import { studentTQuantile, summary } from '../../../src/core/stats/index.ts'
import { pooledDifference, tTest } from '../../../src/core/stats/judging/index.ts'
import type { Comparison } from '../../../src/core/terms/index.ts'
import { replicate, replicates, steps } from './replicates.ts'

function compared(all: readonly Replicate[], ask: CompareAsk = {}): Comparison {
  const outcome = compareSamples(all, { ...ask, options: { draws: 2000, ...ask.options } })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

const levelsA = [1.02, 0.99, 1.0, 1.01, 0.98]
const levelsB = [0.9, 0.92, 0.89, 0.91, 0.9]
const two = [...replicates('A', levelsA), ...replicates('B', levelsB)]

describe('two samples whose replicates differ by level alone', () => {
  const [difference] = compared(two).differences
  const ln = (levels: readonly number[]) => summary(levels.map(Math.log))
  const t = pooledDifference(ln(levelsB), ln(levelsA))

  test('the band is that of the two-sample t test (closed form), as all speeds say the same', () => {
    const half = studentTQuantile(0.975, 8) * t.standardError
    for (const i of [0, 7, difference.value.length - 1]) {
      expect(difference.value[i]).toBeCloseTo(Math.expm1(t.difference), 10)
      expect(difference.lowAlone[i]).toBeCloseTo(Math.expm1(t.difference - half), 10)
      expect(difference.highAlone[i]).toBeCloseTo(Math.expm1(t.difference + half), 10)
    }
    // 2000 draws leave the factor uncertain by a few per cent.
    expect(Math.abs(difference.factor / studentTQuantile(0.975, 8) - 1)).toBeLessThan(0.06)
  })

  test('effects at named speeds are the t test, with the allowance of Holm', () => {
    expect(difference.named.map(({ slidingSpeed }) => slidingSpeed)).toEqual([0.001, 0.01, 0.1])
    for (const { p, adjusted, degreesOfFreedom } of difference.named) {
      expect(p / tTest(t).p).toBeCloseTo(1, 8)
      expect(adjusted / p).toBeCloseTo(3, 8)
      expect(degreesOfFreedom).toBe(8)
    }
  })

  test('the sentence says where, how much, and that it does not reach the margin for certain', () => {
    expect(difference.sentence).toMatch(
      /^B slips more easily than A over the whole range, from 0\.5 to 200 mm\/s, by 9\.6 % \(95 % band 7\.\d to 11 %\), which may or may not reach the 10 % that matter\.$/,
    )
  })

  test('one rig and fixture: what is shared cancels', () => {
    expect([difference.cancelled, difference.notCancelled]).toEqual([['torqueScale', 'lever'], []])
  })
})

test('a level common to both samples changes nothing, and the other order gives the reciprocal', () => {
  const [plain] = compared(two).differences
  const scaled = two.map((one) => ({
    ...one,
    points: one.points.map((point) => ({ ...point, friction: 7 * point.friction, own: 7 * point.own })),
  }))
  const [times] = compared(scaled).differences
  const [turned] = compared([...two.slice(5), ...two.slice(0, 5)]).differences
  for (const i of [0, 11]) {
    expect(times.low[i]).toBeCloseTo(plain.low[i], 10)
    expect((1 + turned.value[i]) * (1 + plain.value[i])).toBeCloseTo(1, 10)
    expect(turned.factor / plain.factor).toBeCloseTo(1, 1)
  }
  expect(turned.sentence).toMatch(/^A slips less easily than B/)
})

test('another rig: what both share does not cancel and widens the band by its square', () => {
  const other = two.map((one) => (one.sample === 'B' ? { ...one, rig: 'another' } : one))
  const [[same], [apart]] = [compared(two).differences, compared(other).differences]
  expect(apart.notCancelled).toEqual(['torqueScale', 'lever'])
  const half = (low: number, value: number): number => Math.log1p(value) - Math.log1p(low)
  const shared = Math.hypot(0.01, 0.01, 0.002, 0.002)
  expect(half(apart.low[0], apart.value[0])).toBeCloseTo(
    Math.hypot(half(same.low[0], same.value[0]), 1.959964 * shared),
    8,
  )
  // The fixture alone: its lever does not cancel, the rig's scales do.
  const fixture = two.map((one) => (one.sample === 'B' ? { ...one, fixture: 'ring' } : one))
  expect(compared(fixture).differences[0].notCancelled).toEqual(['lever'])
})

test('where a difference begins: below it the data cannot tell, above it they can', () => {
  const bends = (speed: number): number => 0.2 / (1 + (speed / 0.01) ** 2 / (1 + (speed / 0.01) ** 2))
  const all = [
    ...replicates('A', levelsA),
    ...replicates(
      'B',
      levelsA.map((level) => level * 1.004),
      { law: bends },
    ),
  ]
  const [{ stretches, sentence }] = compared(all).differences
  expect(stretches[0].verdict).toBe('open')
  expect(stretches.at(-1)).toMatchObject({ verdict: 'lower', beyond: true })
  expect(sentence).toMatch(
    /^B slips more easily than A from [\d.]+ to 200 mm\/s, by .* %\)[^;]*; (below|.*the same within 10 %)/,
  )
})

test('practically the same: all intervals of two one-sided tests lie inside the margin', () => {
  const all = [...replicates('A', [1, 1.01, 0.99]), ...replicates('B', [1.005, 1.015, 0.995])]
  const [{ same, stretches, sentence }] = compared(all).differences
  expect(same.everywhere).toBe(true)
  expect(stretches).toHaveLength(1)
  expect(stretches[0]).toMatchObject({ verdict: 'open', within: true })
  expect(sentence).toBe('A and B are the same within 10 % at every speed from 0.5 to 200 mm/s.')
  const [narrow] = compared(all, { options: { margin: 0.01 } }).differences
  expect(narrow.same.everywhere).toBe(false)
  expect(narrow.sentence).toBe(
    'The data cannot tell A from B at any speed from 0.5 to 200 mm/s, nor show that they are the same within 1 %.',
  )
})

test('on the scale of differences the effect is friction less friction', () => {
  const [{ value, sentence }] = compared(two, { options: { scale: 'difference', margin: 0.02 } }).differences
  expect(value[0]).toBeCloseTo(0.2 * (0.904 - 1), 10)
  expect(sentence).toMatch(/by 0\.019 \(95 % band 0\.0\d+ to 0\.0\d+\)/)
})

test('one sample alone: repeatability with its interval, and no verdict', () => {
  const { repeatability, differences, sentences, samples, ranking } = compared(replicates('A', levelsA))
  const { standardDeviation } = summary(levelsA.map(Math.log))
  expect([differences, ranking]).toEqual([[], null])
  expect(repeatability?.pooled).toBeCloseTo(standardDeviation, 10)
  expect(repeatability?.degreesOfFreedom).toBeCloseTo(4, 6)
  // s known within 0.60 to 2.87 of itself with four degrees of freedom (χ² at 0.975 and 0.025: 11.1433 and 0.484419, E-Handbook).
  expect((repeatability?.low ?? 0) / standardDeviation).toBeCloseTo(Math.sqrt(4 / 11.1433), 4)
  expect((repeatability?.high ?? 0) / standardDeviation).toBeCloseTo(Math.sqrt(4 / 0.484419), 4)
  expect(samples[0].own[0]).toBeCloseTo((0.001 * samples[0].mean[0]) / Math.sqrt(5), 8)
  expect(sentences[0]).toMatch(/^Replicates of A scatter by 1\.6 % \(95 % interval 0\.9 % to 4\.5 %\)/)
})

test('a single replicate tells no scatter, and nobody pretends', () => {
  const { samples, differences, sentences } = compared([replicate('A', 1), replicate('B', 1, { level: 0.5 })])
  expect(samples.map(({ low, repeatability }) => [low, repeatability])).toEqual([
    [null, null],
    [null, null],
  ])
  expect(differences).toEqual([])
  expect(sentences[0]).toMatch(/nobody can tell a difference/)
})

test('records of one speed are compared at that speed', () => {
  const at = { speeds: [0.01] }
  const { speeds, differences } = compared([...replicates('A', levelsA, at), ...replicates('B', levelsB, at)])
  expect(speeds).toEqual([0.01])
  expect(differences[0].sentence).toMatch(/^B slips more easily than A/)
})

test('speeds up and down are averaged into one step', () => {
  const upAndDown = (one: Replicate): Replicate => ({
    ...one,
    points: one.points.flatMap((p) => [
      { ...p, friction: p.friction * 1.1 },
      { ...p, friction: p.friction / 1.1, slidingSpeed: p.slidingSpeed * 1.001 },
    ]),
  })
  const { samples } = compared(replicates('A', levelsA).map(upAndDown))
  expect(samples[0].mean[3]).toBeCloseTo(compared(replicates('A', levelsA)).samples[0].mean[3], 8)
})

describe('a replicate that stands out', () => {
  const odd = replicates('A', [1, 1.01, 0.99, 1.005, 0.995, 1.4])

  test('is flagged and stays in', () => {
    const [{ replicates: all, used }] = compared(odd).samples
    expect(used).toBe(6)
    expect(all[5].flags.map(({ test: name, outlier }) => [name, outlier])).toEqual([
      ['grubbs', true],
      ['mandelH', false],
    ])
    expect(all.slice(0, 5).every(({ flags }) => flags.length === 0)).toBe(true)
  })

  test('two that hide each other are found together, where one alone is not', () => {
    const [{ replicates: all }] = compared(replicates('A', [1, 1.01, 0.99, 1.005, 0.995, 1.3, 1.31])).samples
    expect(all.slice(5).map(({ flags }) => flags.map((flag) => flag.test))).toEqual([['grubbsPair'], ['grubbsPair']])
  })

  test('goes out by a person with a reason alone, and is told', () => {
    const removals = [{ record: 'A-6', by: 'MK', why: 'the ball was scratched' }]
    const { samples, sentences, repeatability } = compared(odd, { removals })
    expect(samples[0].used).toBe(5)
    expect(samples[0].replicates[5].removed).toEqual(removals[0])
    expect(repeatability?.pooled).toBeLessThan(0.01)
    expect(sentences).toContain('A-6.csv was taken out by MK: the ball was scratched.')
  })

  test('is refused without a person or a reason, and where nobody bears the name', () => {
    const outcome = compareSamples(odd, {
      removals: [
        { record: 'A-6', by: 'MK', why: ' ' },
        { record: 'A-9', by: 'MK', why: 'odd' },
      ],
    })
    expect(outcome.ok || outcome.problems.map(({ kind }) => kind)).toEqual(['removalUnsigned', 'removalUnknown'])
  })
})

test('bad input: no records, no common speed, a speed outside, a record without points', () => {
  const kinds = (all: readonly Replicate[], ask: CompareAsk = {}) => {
    const outcome = compareSamples(all, ask)
    return outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)
  }
  expect(kinds([])).toEqual(['nothingToCompare'])
  expect(kinds([replicate('A', 1, { speeds: [0.001, 0.002] }), replicate('B', 1, { speeds: [0.1, 0.2] })])).toEqual([
    'noCommonSpeed',
  ])
  expect(kinds(two, { at: [1] })).toEqual(['speedOutside'])
  expect(kinds([replicate('A', 1, { points: [] })])).toEqual(['noTrustedPoint'])
})

test('outside the speeds at which all records may be believed, it says so', () => {
  const short = two.map((one) => ({ ...one, window: { low: steps[3], high: steps[10] } }))
  expect(compared(short).sentences.at(-1)).toMatch(/^All records may be believed from [\d.]+ to 200 mm\/s alone/)
})

test('samples that scatter unlike are told, and may each have their own scatter', () => {
  const unlike = [...replicates('A', [1, 1.01, 0.99, 1.002]), ...replicates('B', [0.6, 0.9, 1.3, 1.1])]
  const { scatter, sentences } = compared(unlike)
  expect(scatter?.cochran).toMatchObject({ sample: 'B', outlier: true })
  expect(sentences.some((sentence) => sentence.startsWith('B scatters more than the others'))).toBe(true)
  const [separate] = compared(unlike, { options: { scatter: 'separate' } }).differences
  expect(separate.degreesOfFreedom).toBeLessThan(3.1)
})
