import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { linearLeastSquares } from '../../../../src/core/numeric/index.ts'
import { correlate, studentTQuantile, typeA } from '../../../../src/core/stats/index.ts'
import { type Distribution, jointCovariance, propagateLinear } from '../../../../src/core/stats/judging/index.ts'
import { examples } from '../examples.ts'

const near = (value: number, want: number, within: number): void =>
  expect(Math.abs(value - want), `${value} for ${want}`).toBeLessThan(within)

const normal = (value: number, standardUncertainty: number, degreesOfFreedom?: number): Distribution => ({
  is: 'normal',
  value,
  standardUncertainty,
  degreesOfFreedom,
})

/** l = l_s + d − l_s(δα·θ + α_s·δθ): JCGM 100:2008, H.1. */
const endGauge = {
  inputs: [
    normal(50_000_623, 25, 18),
    normal(215, 9.7, 25.6),
    normal(0, 0.58e-6, 50),
    normal(-0.1, 0.41),
    normal(11.5e-6, 1.2e-6),
    normal(0, 0.029, 2),
  ],
  evaluate: ([ls, d, da, theta, as, dt]: ArrayLike<number> & Iterable<number>) => ls + d - ls * (da * theta + as * dt),
}
const model = { inputs: endGauge.inputs, evaluate: (x: ArrayLike<number>) => endGauge.evaluate(Array.from(x)) }

describe('end gauge (JCGM 100:2008, H.1)', () => {
  const found = propagateLinear(model, 0.99)

  test('length, parts, combined uncertainty, degrees of freedom, expanded uncertainty', () => {
    near(found.estimate, 50_000_838, 1)
    const parts = found.contributions.map(({ size }) => size)
    // The last is 50 000 623 · 11.5e-6 · 0.029; the guide prints 16.6.
    for (const [index, want] of [25, 9.7, 2.9, 0, 0, 16.675].entries()) near(parts[index], want, 0.05)
    near(found.standardUncertainty, 31.7, 0.05)
    near(found.degreesOfFreedom, 16.7, 0.1)
    near(found.coverageFactor, 2.92, 0.005)
    near(found.high - found.estimate, 92.6, 0.2)
  })

  test('with the terms of next higher order 34 nm', () => {
    near(found.second?.standardUncertainty ?? Number.NaN, 33.9, 0.05)
  })

  test('given sensitivities give the same', () => {
    const ls = 50_000_623
    const given = propagateLinear({ ...model, sensitivities: [1, 1, 0.1 * ls, 0, 0, -ls * 11.5e-6] }, 0.99)
    near(given.standardUncertainty, found.standardUncertainty, 1e-3)
  })
})

describe('resistance and reactance (JCGM 100:2008, H.2)', () => {
  const { V, I_mA: I, phi } = examples.gumH2
  const series = [V, I.map((milli) => milli / 1000), phi]
  const inputs = series.map((readings) => {
    const { mean, standardUncertainty } = typeA(readings)
    return normal(mean, standardUncertainty, 4)
  })
  const pairs = [
    [0, 1],
    [0, 2],
    [1, 2],
  ]
  const correlations = pairs.map(([first, second]) => ({
    first,
    second,
    coefficient: correlate(series[first], series[second]),
  }))
  const outcomes = [
    { name: 'R', of: (x: ArrayLike<number>) => (x[0] / x[1]) * Math.cos(x[2]), value: 127.732, u: 0.071, alone: 0.195 },
    {
      name: 'X',
      of: (x: ArrayLike<number>) => (x[0] / x[1]) * Math.sin(x[2]),
      value: 219.847,
      u: 0.2956,
      alone: 0.201,
    },
    { name: 'Z', of: (x: ArrayLike<number>) => x[0] / x[1], value: 254.26, u: 0.236, alone: 0.204 },
  ]

  test.for(outcomes)('$name with and without the correlations', ({ of, value, u, alone }) => {
    const joined = propagateLinear({ inputs, evaluate: of, correlations })
    near(joined.estimate, value, 1e-3)
    near(joined.standardUncertainty, u, 1e-3)
    expect(joined.second).toBeNull()
    near(propagateLinear({ inputs, evaluate: of }).standardUncertainty, alone, 1e-3)
  })

  test.for([
    { given: correlations, want: [-0.588, -0.485, 0.993], how: 'with' },
    { given: [], want: [0.056, 0.527, 0.878], how: 'without' },
  ])('what the three have in common, $how correlations', ({ given, want }) => {
    const joint = jointCovariance(
      outcomes.map(({ of }) => of),
      { inputs, correlations: given },
    )
    const r = (a: number, b: number): number => joint[3 * a + b] / Math.sqrt(joint[4 * a] * joint[4 * b])
    for (const [index, [a, b]] of pairs.entries()) near(r(a, b), want[index], 1e-3)
  })
})

test('mass with one significant digit: first order 0.0539, with the next terms 0.0750 (JCGM 101:2008, 9.3)', () => {
  const found = propagateLinear(massModel)
  near(found.estimate, 1.234, 2e-4)
  near(found.standardUncertainty, 0.0539, 2e-4)
  near(found.low, 1.1285, 5e-4)
  near(found.high, 1.3395, 5e-4)
  near(found.second?.standardUncertainty ?? Number.NaN, 0.075, 2e-4)
})

/** JCGM 101:2008, 9.3, in mg and kg/m³. */
const massModel = {
  inputs: [
    normal(100_000, 0.05),
    normal(1.234, 0.02),
    { is: 'rectangular', value: 1.2, halfWidth: 0.1 },
    { is: 'rectangular', value: 8000, halfWidth: 1000 },
    { is: 'rectangular', value: 8000, halfWidth: 50 },
  ] satisfies Distribution[],
  evaluate: (x: ArrayLike<number>) => (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000,
}

test('comparison loss: first order sees nothing at zero, the next terms 50e-6 (JCGM 101:2008, 9.4)', () => {
  const evaluate = (x: ArrayLike<number>): number => x[0] ** 2 + x[1] ** 2
  const at = (x1: number) => propagateLinear({ inputs: [normal(x1, 0.005), normal(0, 0.005)], evaluate })
  expect(at(0).standardUncertainty).toBeLessThan(1e-12)
  near(at(0).second?.standardUncertainty ?? Number.NaN, 50e-6, 0.25e-6)
  near(at(0).second?.shift ?? Number.NaN, 50e-6, 0.25e-6)
  near(at(0.01).second?.standardUncertainty ?? Number.NaN, 111.8e-6, 0.5e-6)
  near(at(0.05).second?.standardUncertainty ?? Number.NaN, 502.5e-6, 2.5e-6)
})

test('coverage factor is that of t at the whole number below (JCGM 100:2008, G.4.1, note)', () => {
  const found = propagateLinear({ inputs: [normal(1, 0.1, 4), normal(1, 0.1, 5)], evaluate: (x) => x[0] + x[1] })
  near(found.degreesOfFreedom, 4 / (1 / 4 + 1 / 5), 1e-9)
  near(found.coverageFactor, studentTQuantile(0.975, 8), 1e-12)
})

describe('calibration of a thermometer: a line through its corrections (JCGM 100:2008, H.3)', () => {
  const { gumH3 } = JSON.parse(
    readFileSync(new URL('../../../data/stats/rounds-and-charts.json', import.meta.url), 'utf8'),
  )
  const line = (t0: number) => {
    const t: number[] = gumH3.t
    const fit = linearLeastSquares([t.map(() => 1), t.map((one) => one - t0)], gumH3.b)
    const variance = fit.residualSumOfSquares / fit.degreesOfFreedom
    const u = (i: number): number => Math.sqrt(variance * fit.inverseGram[3 * i])
    const r = fit.inverseGram[1] / Math.sqrt(fit.inverseGram[0] * fit.inverseGram[3])
    return { fit, variance, r, y1: fit.coefficients[0], y2: fit.coefficients[1], u1: u(0), u2: u(1) }
  }

  test('about 20 °C: intercept, slope, correlation, and the correction at 30 °C', () => {
    const { fit, variance, y1, y2, u1, u2, r } = line(20)
    near(y1, -0.171204, 1e-5)
    near(u1, 0.002878, 1e-6)
    near(y2, 0.0021827, 1e-6)
    near(u2, 0.00066794, 1e-7)
    near(r, -0.9304, 1e-4)
    near(Math.sqrt(variance), 0.0034976, 1e-6)
    expect(fit.degreesOfFreedom).toBe(9)
    const inputs = [normal(y1, u1, 9), normal(y2, u2, 9)]
    const at30 = propagateLinear({
      inputs,
      evaluate: (x) => x[0] + 10 * x[1],
      correlations: [{ first: 0, second: 1, coefficient: r }],
    })
    near(at30.estimate, -0.14938, 1e-5)
    near(at30.standardUncertainty, 0.0041386, 1e-6)
  })

  test('about the mean of the temperatures both are uncorrelated', () => {
    const t: number[] = gumH3.t
    const t0 = t.reduce((a, b) => a + b, 0) / t.length
    near(t0, 24.008455, 1e-6)
    const { y1, u1, r } = line(t0)
    near(y1, -0.162455, 1e-6)
    near(u1, 0.0010546, 1e-7)
    near(r, 0, 1e-9)
  })
})
