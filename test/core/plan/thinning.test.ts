import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  fillFromTables,
  frictionAt,
  frictionModel,
  logAxis,
  type Plan,
  type PlanQuestion,
  planBasis,
  planOf,
  planWindow,
  type QuestionFlow,
} from '../../../src/core/plan/index.ts'
import { oatQuestion } from './questions.ts'

// Invented: an oat drink between two plateaus, measured from 0.1 to 1000 1/s.
const flow: QuestionFlow = {
  law: 'cross',
  parameters: { restViscosity: 0.5, fastViscosity: 3.5e-3, time: 0.5, exponent: 0.75 },
  shearRate: { low: 0.1, high: 1000 },
  source: 'invented',
}

const thinning: PlanQuestion = { ...oatQuestion, flow }

function planned(question: PlanQuestion): Plan {
  const plan = planOf(question)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  return plan.value
}

const viscosity = oatQuestion.liquid?.viscosity ?? Number.NaN

test('a flow of one viscosity gives the plan of that viscosity', () => {
  const newton: QuestionFlow = { ...flow, law: 'newtonian', parameters: { viscosity } }
  const [one, other] = [planned({ ...oatQuestion, flow: newton }), planned(oatQuestion)]
  expect(one.suggestion).toEqual(other.suggestion)
  for (const [i, { friction }] of one.points.entries()) {
    expect(friction.lambda?.value).toBeCloseTo(other.points[i].friction.lambda?.value ?? Number.NaN, 7)
    expect(friction.value).toBeCloseTo(other.points[i].friction.value, 7)
  }
  expect(one.regime.fullFilmFrom?.value).toBeCloseTo(other.regime.fullFilmFrom?.value ?? Number.NaN, 6)
})

test('the window says the same as one place by itself, within the coarse net on which films are solved', () => {
  const basis = planBasis(thinning)
  const axes = { speeds: logAxis(1e-5, 1, 200), forces: logAxis(0.05, 20, 200) }
  const window = planWindow(basis, axes)
  const model = frictionModel(thinning, basis.contact)
  for (let j = 0; j < 200; j += 13) {
    for (let i = 0; i < 200; i += 7) {
      const alone = frictionAt(model, axes.speeds[i], window.byForce.load[j])
      const k = j * 200 + i
      // Straight lines between nodes 0.36 apart in ln v: their curvature leaves under half a percent of λ.
      expect(Math.abs((window.lambda?.[k] ?? Number.NaN) / (alone.lambda?.value ?? 1) - 1)).toBeLessThan(5e-3)
      expect(Math.abs(window.friction[k] / alone.value - 1)).toBeLessThan(5e-3)
    }
  }
})

test('thinning makes the slow film thicker than the fast plateau’s and says at which rates', () => {
  const plan = planned(thinning)
  const plateau = planned(oatQuestion)
  const lambda = (of: Plan, step: number): number => of.points[step].friction.lambda?.value ?? Number.NaN
  const gains = plan.points
    .filter(({ direction }) => direction === 1)
    .map(({ step, slidingSpeed }) => {
      const other = plateau.points.find((point) => point.slidingSpeed === slidingSpeed)
      return lambda(plan, step - 1) / (other?.friction.lambda?.value ?? Number.NaN)
    })
  expect(gains[0]).toBeGreaterThan(1.05)
  expect(gains.every((gain, i) => gain > 1 && (i === 0 || gain < gains[i - 1]))).toBe(true)
  const inlets = plan.points.map(({ friction }) => friction.inlet)
  expect(inlets.every((inlet) => inlet !== null && inlet.viscosity >= 3.5e-3 && inlet.viscosity <= 0.5)).toBe(true)
  const sentences = plan.regime.sentences.join(' ')
  expect(sentences).toContain('The liquid thins')
  expect(sentences).toMatch(/\d+ of \d+ steps shear it beyond the 0\.1 1\/s to 1000 1\/s that were measured/)
  expect(sentences).toMatch(/by u\/h the film .* by v\/h/)
  expect(plan.regime.film?.law).toContain('inlet')
})

test('a flow curve among the own liquids is taken by its name', () => {
  const question: PlanQuestion = { ...oatQuestion, liquid: { name: 'Oat drink, ours' } }
  const recipe = {
    kind: 'flowCurve',
    name: 'oat drink, ours',
    temperature: 308.15,
    relativeUncertainty: 0.03,
    ...flow,
  } as const
  const own = { materials: [], liquids: [{ name: recipe.name, synonyms: [], recipe }] }
  const filled = fillFromTables(question, own)
  if (!filled.ok) throw new Error(JSON.stringify(filled.problems))
  expect(filled.value.question.flow).toEqual(flow)
  // Cross at 1000 1/s: 3.5 mPa·s + 496.5/(1 + 500^0.75).
  const fast = 3.5e-3 + 0.4965 / (1 + 500 ** 0.75)
  expect(filled.value.question.liquid?.viscosity).toBeCloseTo(fast, 10)
  expect(filled.value.question.liquid?.viscosityUncertainty).toBeCloseTo(0.03 * fast, 10)
  expect(filled.value.taken.join(' ')).toContain('1000 1/s')
  const cold = fillFromTables({ ...question, run: { temperature: 293.15 } }, own)
  expect(cold.ok ? [] : cold.problems.map(({ kind }) => kind)).toEqual(['temperatureOutsideTable'])
})

test('a flow curve or viscosities in the question itself are taken as well', () => {
  const { restViscosity, fastViscosity, time, exponent } = flow.parameters
  const rates = [0.1, 0.3, 1, 3, 10, 30, 100, 300, 1000]
  const byRate = rates.map((at) => ({
    at,
    viscosity: fastViscosity + (restViscosity - fastViscosity) / (1 + (time * at) ** exponent),
  }))
  const thin = fillFromTables({ ...oatQuestion, liquid: { name: 'drink', byRate } })
  if (!thin.ok) throw new Error(JSON.stringify(thin.problems))
  expect(thin.value.question.flow).toMatchObject({ law: 'cross', shearRate: { low: 0.1, high: 1000 } })
  expect(thin.value.question.flow?.parameters.time).toBeCloseTo(time, 3)
  const byTemperature = [
    { at: 313.15, viscosity: 3e-3 },
    { at: 303.15, viscosity: 4e-3 },
  ]
  const warm = fillFromTables({ ...oatQuestion, liquid: { name: 'drink', byTemperature } })
  if (!warm.ok) throw new Error(JSON.stringify(warm.problems))
  // Two points make an Arrhenius line: ln η straight in 1/T, at 308.15 K.
  const share = (1 / 303.15 - 1 / 308.15) / (1 / 303.15 - 1 / 313.15)
  expect(warm.value.question.liquid?.viscosity).toBeCloseTo(4e-3 * (3 / 4) ** share, 8)
  const short = fillFromTables({ ...oatQuestion, liquid: { name: 'drink', byRate: byRate.slice(0, 2) } })
  expect(short.ok ? [] : short.problems.map(({ place }) => place.name)).toEqual(['liquid.byRate'])
})

describe('whatever the law, nothing becomes NaN', () => {
  const size = (low: number, high: number) =>
    fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp)
  const laws = fc.oneof(
    fc
      .record({ consistency: size(1e-4, 1e3), exponent: fc.double({ min: 0, max: 1.5, noNaN: true }) })
      .map((parameters) => ({ law: 'powerLaw', parameters }) as const),
    fc
      .record({
        yieldStress: size(1e-3, 1e3),
        consistency: size(1e-4, 1e2),
        exponent: fc.double({ min: 0.1, max: 1, noNaN: true }),
      })
      .map((parameters) => ({ law: 'herschelBulkley', parameters }) as const),
    fc
      .record({
        restViscosity: size(1e-3, 1e4),
        fastViscosity: size(1e-6, 1e-3),
        time: size(1e-6, 1e4),
        exponent: fc.double({ min: 0, max: 1, noNaN: true }),
      })
      .map((parameters) => ({ law: 'cross', parameters }) as const),
  )
  test('in points, window and speeds', () => {
    fc.assert(
      fc.property(laws, (law) => {
        const question: PlanQuestion = { ...oatQuestion, flow: { ...flow, ...law } }
        const plan = planOf(question)
        if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
        expect(JSON.stringify(plan.value)).not.toMatch(/NaN|Infinity/)
        const window = planWindow(planBasis(question), { speeds: logAxis(1e-4, 1, 40), forces: logAxis(0.05, 20, 20) })
        expect(window.friction.every((value) => value > 0 && value < Number.POSITIVE_INFINITY)).toBe(true)
        expect(window.lambda?.every((value) => value > 0 && value < Number.POSITIVE_INFINITY)).toBe(true)
      }),
      { numRuns: 60 },
    )
  })
})
