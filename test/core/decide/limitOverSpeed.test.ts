import { describe, expect, test } from 'vitest'
import { type LimitAsk, limitOverSpeed } from '../../../src/core/decide/index.ts'
import { usualRule } from '../../../src/core/stats/judging/index.ts'
import { stepsOf } from './inventedSteps.ts'

const at = (speed: number, upper: number, more: Partial<LimitAsk> = {}): LimitAsk => ({
  tolerance: { lower: null, upper },
  rule: usualRule,
  at: [speed],
  from: null,
  to: null,
  ...more,
})

const three = [stepsOf([0.2, 0.1, 0.08]), stepsOf([0.2, 0.11, 0.08]), stepsOf([0.2, 0.121, 0.08])]

test('three mountings: geometric mean, scatter over √3 with t at two degrees of freedom, by hand', () => {
  // ln of 0.1, 0.11, 0.121 are spaced by ln 1.1, so s is ln 1.1 and u is 0.11·ln 1.1/√3 = 0.0060530; t(0.975; 2) = 4.3027.
  const [speed] = limitOverSpeed(three, at(0.01, 0.2)).speeds
  expect(speed.friction).toBeCloseTo(0.11, 12)
  expect(speed.standardUncertainty).toBeCloseTo((0.11 * Math.log(1.1)) / Math.sqrt(3), 12)
  expect(speed.degreesOfFreedom).toBeCloseTo(2, 12)
  expect(speed.passGuard).toBeCloseTo(4.302653 * speed.standardUncertainty, 7)
})

test.for([
  { upper: 0.137, verdict: 'pass' },
  { upper: 0.135, verdict: 'cannotTell' },
  { upper: 0.085, verdict: 'cannotTell' },
  { upper: 0.083, verdict: 'fail' },
] as const)('guard band of U = 0.02604 about 0.11: a limit of $upper is $verdict', ({ upper, verdict }) => {
  expect(limitOverSpeed(three, at(0.01, upper)).verdict).toBe(verdict)
})

test('what the rig shares does not shrink with the mountings', () => {
  const shared = { torqueScale: 0.03, lever: 0.04 }
  const scaled = three.map((one) => ({ ...one, points: one.points.map((point) => ({ ...point, shared })) }))
  const [speed] = limitOverSpeed(scaled, at(0.01, 0.2)).speeds
  expect(speed.standardUncertainty / speed.friction).toBeCloseTo(Math.hypot(Math.log(1.1) / Math.sqrt(3), 0.05), 12)
  // Welch and Satterthwaite: 2·(1 + 0.05²/b²)² with b the scatter part.
  const b = Math.log(1.1) / Math.sqrt(3)
  expect(speed.degreesOfFreedom).toBeCloseTo(2 * (1 + (0.05 / b) ** 2) ** 2, 9)
})

describe('one mounting', () => {
  const one = stepsOf([0.2, 0.1, 0.08], {
    points: [{ slidingSpeed: 0.01, friction: 0.1, own: 0.003, shared: { forceScale: 0.04 } }],
  })

  test('has its own and the shared part, and the verdict is about it alone', () => {
    const answer = limitOverSpeed([one], at(0.01, 0.11))
    expect(answer.speeds[0].standardUncertainty).toBeCloseTo(0.005, 12)
    expect(answer).toMatchObject({ replicates: 1, verdict: 'pass' })
    expect(answer.sentence).toMatch(/^This mounting of lacquer passes/)
  })
})

describe('a range', () => {
  const range = (from: number | null, to: number | null, upper = 0.3): LimitAsk => at(0, upper, { at: [], from, to })

  test('all that the data cover where nothing is said', () => {
    const { speeds, uncovered, verdict } = limitOverSpeed(three, range(null, null))
    expect([speeds[0].slidingSpeed, speeds.at(-1)?.slidingSpeed]).toEqual([1e-3, 0.1])
    expect(uncovered).toEqual([])
    expect(verdict).toBe('pass')
  })

  test('what nobody measured cannot pass, and is named', () => {
    const answer = limitOverSpeed(three, range(1e-4, 1))
    expect(answer.verdict).toBe('cannotTell')
    expect(answer.uncovered).toEqual([
      { from: 1e-4, to: 1e-3 },
      { from: 0.1, to: 1 },
    ])
    expect(answer.sentence).toContain('nobody measured')
  })

  test('where a record may not be believed counts as not measured', () => {
    const doubtful = three.map((one) => ({ ...one, window: { low: 5e-3, high: null } }))
    expect(limitOverSpeed(doubtful, range(1e-3, 0.1)).uncovered).toEqual([{ from: 1e-3, to: 5e-3 }])
  })

  test('a fail needs no other speed: one beyond is enough', () => {
    const answer = limitOverSpeed(three, range(1e-4, null, 0.15))
    expect(answer.verdict).toBe('fail')
    expect(answer.sentence).toContain('does not keep to a friction of at most 0.15')
  })

  test('nothing of the range was measured', () => {
    expect(limitOverSpeed(three, range(1, 2))).toMatchObject({ verdict: 'cannotTell', speeds: [] })
  })
})
