import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type PlanQuestion, planOf, runSheetOf } from '../../../src/core/plan/index.ts'
import type { FixtureSpec } from '../../../src/core/terms/index.ts'
import { oatQuestion } from './questions.ts'

const fixtures: readonly FixtureSpec[] = [
  { kind: 'ballsOnPlate', balls: 3, ballDiameter: 6.35e-3, trackRadius: 0.015, trackRadiusUncertainty: 1e-5 },
  { kind: 'ballsOnPlate', balls: 1, ballDiameter: 6.35e-3, trackRadius: 0.012, trackRadiusUncertainty: 0 },
  oatQuestion.fixture,
  { kind: 'ballOnBalls', ballDiameter: 12.7e-3, ballDiameterUncertainty: 1e-6 },
  {
    kind: 'ringOnPlate',
    outerRadius: 0.0125,
    innerRadius: 0.01,
    segments: 3,
    pressure: 'uniformWear',
    radiusUncertainty: 0,
  },
  { kind: 'discOnPlate', radius: 0.0125, pressure: 'uniformPressure', radiusUncertainty: 0 },
  { kind: 'pinsOnDisc', pins: 1, pinDiameter: 5e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
  { kind: 'pinsOnDisc', pins: 2, pinDiameter: 5e-3, endRadius: 4e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
]

const size = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp)
const maybe = <T>(what: fc.Arbitrary<T>) => fc.option(what, { nil: undefined })

/** Pairs, liquids, rigs and wishes from the sensible to the absurd. */
const anyQuestion: fc.Arbitrary<PlanQuestion> = fc
  .record({
    fixture: fc.constantFrom(...fixtures),
    moduli: fc.tuple(maybe(size(1e4, 1e12)), maybe(size(1e4, 1e12))),
    poisson: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    thickness: maybe(size(1e-7, 1e-2)),
    roughness: fc.tuple(maybe(size(1e-9, 1e-4)), maybe(size(1e-9, 1e-4))),
    viscosity: maybe(size(1e-5, 1e4)),
    speeds: fc.tuple(size(1e-7, 10), size(1, 1e5)),
    forces: fc.tuple(size(1e-4, 100), size(1, 1e4)),
    given: maybe(size(1e-3, 1e3)),
    strengths: fc.tuple(maybe(size(1e4, 1e10)), maybe(size(1e4, 1e10))),
    wear: maybe(size(1e-18, 1e-8)),
    perDecade: fc.integer({ min: 1, max: 20 }),
    dwell: fc.tuple(size(0.1, 100), size(1, 1e3)),
    budget: fc.tuple(size(1, 1e5), size(0.01, 1e4)),
    difference: size(1e-3, 1),
    repeatability: size(1e-4, 1),
    limits: fc.boolean(),
  })
  .map((any) => ({
    ...oatQuestion,
    fixture: any.fixture,
    rig: any.limits
      ? oatQuestion.rig
      : { name: 'bare', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
    pair: {
      upper: {
        name: any.limits ? 'soda-lime glass' : 'glass',
        elasticModulus: any.moduli[0],
        poissonRatio: any.poisson,
        roughness: any.roughness[0],
      },
      lower: {
        name: any.limits ? 'PMMA' : 'layer',
        elasticModulus: any.moduli[1],
        poissonRatio: any.poisson,
        roughness: any.roughness[1],
        thickness: any.thickness,
      },
    },
    liquid: any.viscosity === undefined ? undefined : { name: 'liquid', viscosity: any.viscosity },
    bears: {
      upper: { yieldStrength: any.strengths[0], wearRate: any.wear },
      lower: { flexuralStrength: any.strengths[1], wearRate: any.wear },
    },
    ask: {
      ...oatQuestion.ask,
      slowest: any.speeds[0],
      fastest: any.speeds[0] * any.speeds[1],
      leastForce: any.forces[0],
      mostForce: any.forces[0] * any.forces[1],
      axialForce: any.given,
      perDecade: any.perDecade,
      leastDwell: any.dwell[0],
      mostDwell: any.dwell[0] * any.dwell[1],
      mostTime: any.budget[0],
      mostDistance: any.budget[1],
    },
    deciding: {
      ...oatQuestion.deciding,
      difference: any.difference,
      margin: any.difference,
      repeatability: any.repeatability,
    },
  }))

/** Paths of numbers that are none. */
function badNumbers(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (typeof value === 'string') return /NaN|Infinity|undefined/.test(value) ? [`${path}: ${value}`] : []
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => badNumbers(inner, `${path}.${key}`))
}

test('any question makes a plan and a run sheet without NaN, and a plan keeps to its own limits', () => {
  fc.assert(
    fc.property(anyQuestion, (question) => {
      const outcome = planOf(question)
      if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
      const { value: plan } = outcome
      expect(badNumbers(plan)).toEqual([])
      expect(badNumbers(runSheetOf(plan))).toEqual([])
      expect(plan.suggestion.slowest).toBeGreaterThanOrEqual(question.ask.slowest)
      expect(plan.suggestion.fastest).toBeLessThanOrEqual(question.ask.fastest)
      for (const { friction } of plan.points) {
        expect(friction.low).toBeLessThanOrEqual(friction.value)
        expect(friction.high).toBeGreaterThanOrEqual(friction.value)
      }
    }),
    { numRuns: 150 },
  )
})
