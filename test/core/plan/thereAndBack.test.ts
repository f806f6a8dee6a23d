import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  heldAgainstPlan,
  type Plan,
  type PlanQuestion,
  planOf,
  virtualRunOfPlan,
} from '../../../src/core/plan/index.ts'
import { reduceRecord } from '../../../src/core/reduce/index.ts'
import { type FrictionLaw, familyLaw, simulateRecord, type VirtualRun } from '../../../src/core/rig/index.ts'
import type { FixtureSpec, Reduction, Setup } from '../../../src/core/terms/index.ts'
import { lacquerQuestion } from './questions.ts'

const fixtures: readonly FixtureSpec[] = [
  { kind: 'ballsOnPlate', balls: 3, ballDiameter: 6.35e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
  { kind: 'ballsOnPlate', balls: 1, ballDiameter: 6.35e-3, trackRadius: 0.012, trackRadiusUncertainty: 0 },
  {
    kind: 'ballOnPlates',
    plates: 3,
    ballDiameter: 12.7e-3,
    ballDiameterUncertainty: 0,
    inclination: Math.PI / 4,
    inclinationUncertainty: 0,
  },
  { kind: 'ballOnBalls', ballDiameter: 12.7e-3, ballDiameterUncertainty: 0 },
  {
    kind: 'ringOnPlate',
    outerRadius: 0.0125,
    innerRadius: 0.01,
    segments: 1,
    pressure: 'uniformWear',
    radiusUncertainty: 0,
  },
  { kind: 'discOnPlate', radius: 0.0125, pressure: 'uniformPressure', radiusUncertainty: 0 },
  { kind: 'pinsOnDisc', pins: 3, pinDiameter: 5e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
  { kind: 'pinsOnDisc', pins: 2, pinDiameter: 5e-3, endRadius: 4e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
]

const samplingRate = 10

/** A short sweep, so that many of them can be run. */
function planned(fixture: FixtureSpec, ask: Partial<PlanQuestion['ask']> = {}): Plan {
  const outcome = planOf({
    ...lacquerQuestion,
    fixture,
    bears: { upper: {}, lower: {} },
    pair: { ...lacquerQuestion.pair, lower: { ...lacquerQuestion.pair.lower, thickness: undefined } },
    ask: {
      ...lacquerQuestion.ask,
      slowest: 2e-3,
      fastest: 0.1,
      perDecade: 3,
      leastForce: 1,
      mostForce: 10,
      mostDwell: 20,
      direction: 'up',
      ...ask,
    },
  })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

function reduced(plan: Plan, run: VirtualRun, seed = 1): Reduction {
  const setup: Setup = {
    rig: { ...plan.question.rig, inertia: undefined },
    fixture: plan.question.fixture,
    pair: plan.question.pair,
    run: { axialForce: plan.suggestion.axialForce, temperature: run.sheet.temperature },
    options: {},
  }
  const outcome = reduceRecord(simulateRecord(run, seed).channels, setup)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

describe.each(fixtures.map((fixture, i) => ({ fixture, name: `${fixture.kind} ${i}` })))('$name', ({ fixture }) => {
  const plan = planned(fixture)

  test('plan, virtual rig, reduction: the friction that went in comes out', () => {
    fc.assert(
      fc.property(
        fc.record({
          h: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
          k: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
          n: fc.double({ min: -0.1, max: 0.6, noNaN: true }),
          x0: fc.double({ min: 1e-3, max: 0.1, noNaN: true }),
          m: fc.double({ min: 0.5, max: 2, noNaN: true }),
        }),
        (parameters) => {
          const friction = familyLaw('stribeck', parameters)
          const { points } = reduced(plan, virtualRunOfPlan(plan, { friction, samplingRate, quiet: true }))
          expect(points).toHaveLength(plan.points.length)
          for (const [i, point] of points.entries()) {
            const truth = friction.at(plan.points[i].slidingSpeed)
            expect(Math.abs((point.friction ?? Number.NaN) / truth - 1)).toBeLessThan(1e-9)
          }
        },
      ),
      { numRuns: 6 },
    )
  })

  test('steps of the record last as planned', () => {
    const { points } = reduced(plan, virtualRunOfPlan(plan, { friction: level(0.2), samplingRate, quiet: true }))
    for (const [i, point] of points.entries()) {
      expect(point.slidingSpeed / plan.points[i].slidingSpeed).toBeCloseTo(1, 9)
      // The reduction may cut the head of a step, and samples end a step a tenth of a second early.
      expect(point.turns).toBeLessThanOrEqual(plan.points[i].turns * 1.02)
    }
  })
})

const level = (h: number): FrictionLaw => familyLaw('plateau', { h })

describe('held against its plan', () => {
  const [threeBalls] = fixtures
  const plan = planned(threeBalls, { leastDwell: 30, mostDwell: 60 })

  test('with the noise that was expected, the own uncertainty comes out as predicted', () => {
    const ratios = [1, 2, 3, 4, 5].map((seed) => {
      const run = virtualRunOfPlan(plan, { friction: level(0.25), samplingRate })
      return heldAgainstPlan(plan, reduced(plan, run, seed)).ownRatio ?? Number.NaN
    })
    const middle = [...ratios].sort((a, b) => a - b)[2]
    expect(middle).toBeGreaterThan(0.6)
    expect(middle).toBeLessThan(1.7)
  })

  test('a quiet record on plan has no failure', () => {
    const run = virtualRunOfPlan(plan, { friction: level(0.25), samplingRate, quiet: true })
    const held = heldAgainstPlan(plan, reduced(plan, run))
    expect(held.failures).toEqual([])
    expect(held.missing).toEqual([])
    expect(held.sentence).toBe(`All ${plan.points.length} points came out as planned.`)
  })

  test('ten times the noise, another friction, another load and missing speeds are each told', () => {
    const run = virtualRunOfPlan(plan, { friction: level(0.25), samplingRate })
    const failing = (changed: VirtualRun): string[] =>
      heldAgainstPlan(plan, reduced(plan, changed)).failures.map(({ assumption }) => assumption)
    const torque = { correlated: 10 * plan.noise.torque, correlation: 0.8 }
    const axialForce = { correlated: 10 * plan.noise.axialForce, correlation: 0.8 }
    expect(failing({ ...run, rig: { ...run.rig, noise: { torque, axialForce } } })).toContain('noise')
    expect(failing({ ...run, friction: level(0.05) })).toContain('friction')
    expect(failing({ ...run, sheet: { ...run.sheet, axialForce: 1.1 * run.sheet.axialForce } })).toContain('axialForce')
    const speeds = { kind: 'list', speeds: plan.points.slice(2).map(({ slidingSpeed }) => slidingSpeed) } as const
    const short = heldAgainstPlan(plan, reduced(plan, { ...run, sheet: { ...run.sheet, speeds } }))
    expect(short.missing).toEqual([1, 2])
    expect(short.failures.map(({ assumption }) => assumption)).toContain('speeds')
  })

  test('a record of another plan is seen as such', () => {
    const run = virtualRunOfPlan(plan, { friction: level(0.25), samplingRate, quiet: true })
    const speeds = { kind: 'list', speeds: [0.5, 0.7] } as const
    expect(heldAgainstPlan(plan, reduced(plan, { ...run, sheet: { ...run.sheet, speeds } })).sentence).toContain(
      'another plan',
    )
  })
})
