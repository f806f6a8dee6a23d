import { describe, expect, test } from 'vitest'
import {
  type FlowLawName,
  type FlowParameters,
  fitFlowLaw,
  fitFlowLaws,
  flowViscosity,
  liquidFrom,
  recipeFromFit,
} from '../../../../src/core/material/index.ts'
import { linearLeastSquares, randomFrom } from '../../../../src/core/numeric/index.ts'
import { good, near, problemsOf } from '../near.ts'

const truths: readonly (readonly [FlowLawName, FlowParameters])[] = [
  ['newtonian', { viscosity: 0.3 }],
  ['powerLaw', { consistency: 2, exponent: 0.4 }],
  ['herschelBulkley', { yieldStress: 5, consistency: 1.2, exponent: 0.5 }],
  ['cross', { restViscosity: 10, fastViscosity: 0.01, time: 0.5, exponent: 0.8 }],
  ['carreauYasuda', { restViscosity: 10, fastViscosity: 0.01, time: 0.5, exponent: 0.3, sharpness: 1.4 }],
]

const rates = (count: number, [from, to]: readonly [number, number] = [-2, 4]) =>
  Array.from({ length: count }, (_, i) => 10 ** (from + ((to - from) * i) / (count - 1)))

/** Points on the curve, each off by a normal share. */
function curveOf([law, parameters]: readonly [FlowLawName, FlowParameters], noise = 0, seed = 1) {
  const random = randomFrom(seed)
  return rates(25).map((shearRate) => ({
    shearRate,
    viscosity: flowViscosity(law, parameters, shearRate) * Math.exp(noise * random.normal()),
  }))
}

describe.each(truths)('%s', (law, parameters) => {
  test('comes back from its own exact curve', () => {
    const fit = good(fitFlowLaw(curveOf([law, parameters]), law))
    expect(fit.end.why).toBe('converged')
    for (const { name, value } of fit.estimates) near(value, parameters[name], 1e-7)
  })

  test('1 % of scatter: the truth lies within 2 standard uncertainties in 90 to 99 % of 200 curves', () => {
    let inside = 0
    let told = 0
    let scatter = 0
    for (let seed = 1; seed <= 200; seed++) {
      const fit = good(fitFlowLaw(curveOf([law, parameters], 0.01, seed), law))
      scatter += (fit.scatter ?? 0) / 200
      for (const { name, value, uncertainty } of fit.estimates) {
        if (uncertainty === null) continue
        told++
        if (Math.abs(value - parameters[name]) < 2.08 * uncertainty) inside++
      }
    }
    near(scatter, 0.01, 0.05)
    expect(told).toBeGreaterThan(190 * Object.keys(parameters).length)
    expect(inside / told).toBeGreaterThan(0.9)
    expect(inside / told).toBeLessThan(0.99)
  })
})

test('the power law is the straight line of ln η over ln γ̇, with its uncertainties (linear least squares)', () => {
  const points = curveOf(truths[1], 0.05)
  const x = points.map(({ shearRate }) => Math.log(shearRate))
  const y = points.map(({ viscosity }) => Math.log(viscosity))
  const line = linearLeastSquares([x.map(() => 1), x], y)
  const fit = good(fitFlowLaw(points, 'powerLaw'))
  const variance = line.residualSumOfSquares / line.degreesOfFreedom
  near(fit.parameters.consistency, Math.exp(line.coefficients[0]), 1e-8)
  near(fit.parameters.exponent, 1 + line.coefficients[1], 1e-8)
  near(fit.estimates[1].uncertainty ?? 0, Math.sqrt(variance * line.inverseGram[3]), 1e-6)
  near(fit.estimates[0].uncertainty ?? 0, fit.parameters.consistency * Math.sqrt(variance * line.inverseGram[0]), 1e-6)
  near(fit.scatter ?? 0, Math.sqrt(variance), 1e-9)
})

test('weights: a point that is 100 times surer draws the curve to itself', () => {
  const points = curveOf(truths[0]).map((point, i) => ({
    ...point,
    viscosity: i === 7 ? 0.2 : point.viscosity,
    relativeUncertainty: i === 7 ? 1e-4 : 1e-2,
  }))
  // The weighted mean of logarithms: one weight of 10⁸, 24 of 10⁴.
  const mean = (1e8 * Math.log(0.2) + 24e4 * Math.log(0.3)) / (1e8 + 24e4)
  near(good(fitFlowLaw(points, 'newtonian')).parameters.viscosity, Math.exp(mean), 1e-9)
})

describe('says why it stopped', () => {
  test('a curve without a second plateau holds the fast viscosity at nothing', () => {
    const points = rates(20, [-3, 1]).map((shearRate) => ({
      shearRate,
      viscosity:
        flowViscosity('cross', { restViscosity: 50, fastViscosity: 0, time: 2, exponent: 0.6 }, shearRate) *
        (shearRate > 5 ? 0.99 : 1),
    }))
    const fit = good(fitFlowLaw(points, 'cross'))
    expect(fit.end).toMatchObject({ why: 'atBound', parameter: 'fastViscosity', bound: 0 })
    expect(fit.estimates[1].uncertainty).toBeNull()
    expect(fit.estimates[0].uncertainty).not.toBeNull()
    near(fit.parameters.restViscosity, 50, 0.02)
  })

  test('what does not thin has no time and no exponent to be told', () => {
    const fit = good(fitFlowLaw(curveOf(truths[0], 0.01), 'carreauYasuda'))
    expect(['singular', 'atBound']).toContain(fit.end.why)
  })

  test('yield stress of a plain power law goes to zero and says so', () => {
    const fit = good(fitFlowLaw(curveOf(truths[1], 0.02, 3), 'herschelBulkley'))
    const stress = fit.estimates[0]
    expect(fit.end.why === 'atBound' || Math.abs(stress.value) < 3 * (stress.uncertainty ?? 0)).toBe(true)
  })
})

describe('which law', () => {
  test.for(truths)('%s wins on its own curve or yields to a simpler one within 2 of AICc', ([law, parameters]) => {
    const ranked = good(fitFlowLaws(curveOf([law, parameters], 0.01, 5)))
    near(
      ranked.reduce((sum, { weight }) => sum + weight, 0),
      1,
      1e-12,
    )
    expect(ranked[0].delta).toBe(0)
    expect(ranked.find((fit) => fit.law === law)?.delta).toBeLessThan(2)
  })

  test('laws that need more points are left out', () => {
    const five = curveOf(truths[1]).filter((_, i) => i % 6 === 0)
    expect(
      good(fitFlowLaws(five))
        .map(({ law }) => law)
        .sort(),
    ).toEqual(['newtonian', 'powerLaw'])
  })
})

describe('bad input comes back at once', () => {
  const curve = curveOf(truths[1])
  test.for([
    ['no point', [], ['flowCurveTooShort: The flow curve has 0 different shear rates; the fit needs at least 3.']],
    ['one rate twice', [curve[3], curve[3], curve[4]], ['flowCurveTooShort: The flow curve has 2 different']],
    [
      'signs, holes and infinities',
      [
        ...curve,
        { shearRate: -1, viscosity: 1 },
        { shearRate: 1, viscosity: Number.NaN },
        { shearRate: Infinity, viscosity: 0 },
      ],
      [
        'flowCurveValueImpossible: Point 26 has the shear rate -1 1/s.',
        'flowCurveValueImpossible: Point 27 has the viscosity NaN Pa·s.',
        'flowCurveValueImpossible: Point 28 has the shear rate Infinity 1/s.',
        'flowCurveValueImpossible: Point 28 has the viscosity 0 Pa·s.',
      ],
    ],
    [
      'uncertainties for some',
      curve.map((point, i) => (i === 0 ? { ...point, relativeUncertainty: 0.1 } : point)),
      ['flowCurveValueImpossible: 1 of 25 points have an uncertainty'],
    ],
  ] as const)('%s', ([, points, wanted]) => {
    const seen = problemsOf(fitFlowLaw(points, 'powerLaw'))
    expect(seen).toHaveLength(wanted.length)
    for (const [i, want] of wanted.entries()) expect(seen[i]).toContain(want)
    expect(fitFlowLaws(points).ok).toBe(false)
  })
})

test('a fit becomes a liquid that knows its temperature, its rates and its scatter', () => {
  const fit = good(fitFlowLaw(curveOf(truths[3], 0.01), 'cross'))
  const recipe = recipeFromFit(fit, {
    name: 'oat drink',
    source: 'flow curve of the kitchen lab (invented)',
    temperature: 298.15,
  })
  const liquid = good(liquidFrom(recipe))
  const { viscosity, viscosityUncertainty, law } = good(liquid.viscosity(298.5, { shearRate: 10 }))
  expect(law).toBe('Cross')
  near(viscosity, flowViscosity(...truths[3], 10), 0.02)
  near((viscosityUncertainty ?? 0) / viscosity, fit.scatter ?? 0, 1e-12)
  expect(problemsOf(liquid.viscosity(298.15))[0]).toContain('shearRateMissing')
  expect(problemsOf(liquid.viscosity(298.15, { shearRate: 1e5 }))[0]).toContain('0.01 to 10000 1/s, not at 100000 1/s')
  expect(problemsOf(liquid.viscosity(310, { shearRate: 10 }))[0]).toContain(
    '297.15 K (24 °C) to 299.15 K (26 °C), not at 310 K (36.85 °C)',
  )
  const stretched = good(liquidFrom({ ...recipe, beyond: true }))
  expect(good(stretched.viscosity(298.15, { shearRate: 1e5 })).doubts.map(({ kind }) => kind)).toEqual(['outsideFit'])
})
