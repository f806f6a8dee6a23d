import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import {
  comparePropagations,
  type Distribution,
  drawInputs,
  type InputCorrelation,
  propagateLinear,
  propagateMonteCarlo,
} from '../../../../src/core/stats/judging/index.ts'
import { drawFrom } from '../../../../src/core/stats/propagate/drawFrom.ts'
import { toleranceOf } from '../../../../src/core/stats/propagate/propagateMonteCarlo.ts'
import { standardOf } from '../../../../src/core/stats/propagate/standardOf.ts'

const seed = 20261125

const near = (value: number, want: number, within: number): void =>
  expect(Math.abs(value - want), `${value} for ${want}`).toBeLessThan(within)

const normal = (value: number, standardUncertainty: number): Distribution => ({
  is: 'normal',
  value,
  standardUncertainty,
})
const rectangular = (value: number, halfWidth: number): Distribution => ({ is: 'rectangular', value, halfWidth })
const unit = (u: number): Distribution => rectangular(0, u * Math.sqrt(3))

type Evaluate = (x: ArrayLike<number>) => number

function run(
  inputs: readonly Distribution[],
  evaluate: Evaluate,
  more: { correlations?: readonly InputCorrelation[]; coverage?: number; digits?: number; mostTrials?: number } = {},
) {
  const drawn = drawInputs(inputs, more.correlations ?? [])
  if (!drawn.ok) throw new Error(drawn.fault.why)
  return propagateMonteCarlo(evaluate, { draw: drawn.draw, count: inputs.length }, { seed, ...more })
}

const sum: Evaluate = (x) => x[0] + x[1] + x[2] + x[3]

describe('additive model (JCGM 101:2008, 9.2; ends of the rectangular ones exact by Irwin and Hall)', () => {
  test.for([
    { name: 'four normal', inputs: [1, 1, 1, 1].map((u) => normal(0, u)), u: 2, end: 3.92, within: 0.02 },
    { name: 'four rectangular', inputs: [1, 1, 1, 1].map(unit), u: 2, end: 3.8794, within: 0.02 },
    {
      name: 'one rectangular ten times as wide',
      inputs: [1, 1, 1, 10].map(unit),
      u: 10.149,
      end: 17.016,
      within: 0.05,
    },
  ])('$name', ({ inputs, u, end, within }) => {
    const found = run(inputs, sum, { digits: 3 })
    near(found.standardUncertainty, u, 0.01 * u)
    near(found.symmetric.low, -end, within)
    near(found.symmetric.high, end, within)
  })

  test('the law of propagation fails for the wide rectangle and holds for four normal', () => {
    const wide = [1, 1, 1, 10].map(unit)
    const linear = propagateLinear({ inputs: wide, evaluate: sum })
    near(linear.high, 19.9, 0.05)
    expect(comparePropagations(linear, run(wide, sum), 2).agree).toBe(false)
    const four = [1, 1, 1, 1].map((u) => normal(0, u))
    expect(comparePropagations(propagateLinear({ inputs: four, evaluate: sum }), run(four, sum), 2).agree).toBe(true)
  })
})

describe('mass (JCGM 101:2008, 9.3)', () => {
  const inputs = [
    normal(100_000, 0.05),
    normal(1.234, 0.02),
    rectangular(1.2, 0.1),
    rectangular(8000, 1000),
    rectangular(8000, 50),
  ]
  const evaluate: Evaluate = (x) => (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000
  const found = run(inputs, evaluate, { digits: 2 })

  test('1.2340, u 0.0755, [1.0844, 1.3836] (6e6 trials; printed 1.0834 and 1.3825)', () => {
    near(found.estimate, 1.234, 2e-4)
    near(found.standardUncertainty, 0.0755, 2e-4)
    near(found.symmetric.low, 1.0844, 0.002)
    near(found.symmetric.high, 1.3836, 0.002)
    expect(found.end).toBe('settled')
  })

  test('first order is not valid to one digit, with the next terms it is; to two digits neither', () => {
    const linear = propagateLinear({ inputs, evaluate })
    const one = comparePropagations(linear, found, 1)
    expect(one).toMatchObject({ agree: false, second: { agree: true } })
    near(one.low, 0.044, 0.002)
    near(one.high, 0.044, 0.002)
    expect(comparePropagations(linear, found, 2)).toMatchObject({ agree: false, second: { agree: false } })
  })
})

describe('comparison loss (JCGM 101:2008, 9.4; exact by noncentral χ², correlated ones by 4e6 trials), ×1e-6', () => {
  const evaluate: Evaluate = (x) => x[0] ** 2 + x[1] ** 2
  test.for([
    { x1: 0, r: 0, mean: 50, u: 50, shortest: [0, 149.8] },
    { x1: 0.01, r: 0, mean: 150, u: 111.8, shortest: [0, 366] },
    { x1: 0.05, r: 0, mean: 2550, u: 502.5, shortest: [1594, 3549] },
    { x1: 0, r: 0.9, mean: 50, u: 67.3, shortest: [0, 185] },
    { x1: 0.01, r: 0.9, mean: 150, u: 120.6, shortest: [13, 398] },
    { x1: 0.05, r: 0.9, mean: 2550, u: 504.5, shortest: [1627, 3558] },
  ])('x1 = $x1, r = $r', ({ x1, r, mean, u, shortest }) => {
    const correlations = r === 0 ? [] : [{ first: 0, second: 1, coefficient: r }]
    const inputs = [normal(x1, 0.005), normal(0, 0.005)]
    const found = run(inputs, evaluate, { correlations, digits: 3, mostTrials: 1_000_000 })
    near(1e6 * found.estimate, mean, 0.01 * mean)
    near(1e6 * found.standardUncertainty, u, 0.005 * u)
    const span = shortest[1] - shortest[0]
    near(1e6 * found.shortest.low, shortest[0], 0.015 * span)
    near(1e6 * found.shortest.high, shortest[1], 0.015 * span)
  })
})

test('gauge block: 838 nm, u 35.8, 99 % [744, 932] (JCGM 101:2008, 9.5; interval by 6e6 trials)', () => {
  const t = (value: number, scale: number, degreesOfFreedom: number): Distribution => ({
    is: 't',
    value,
    scale,
    degreesOfFreedom,
  })
  const inputs: Distribution[] = [
    t(50_000_623, 25, 18),
    t(215, 6, 24),
    t(0, 4, 5),
    t(0, 7, 8),
    rectangular(11.5e-6, 2e-6),
    normal(-0.1, 0.2),
    { is: 'arcsine', value: 0, halfWidth: 0.5 },
    { is: 'curvilinearTrapezoidal', value: 0, halfWidth: 1e-6, halfWidthHalfWidth: 0.1e-6 },
    { is: 'curvilinearTrapezoidal', value: 0, halfWidth: 0.05, halfWidthHalfWidth: 0.025 },
  ]
  const evaluate: Evaluate = (x) => {
    const [ls, d, d1, d2, as, t0, cycle, da, dt] = Array.from(x)
    return ls + d + d1 + d2 - ls * (da * (t0 + cycle) + as * dt)
  }
  const found = run(inputs, evaluate, { coverage: 0.99, digits: 2, mostTrials: 600_000 })
  near(found.estimate, 50_000_838, 1)
  near(found.standardUncertainty, 35.8, 0.3)
  near(found.symmetric.low, 50_000_744, 2)
  near(found.symmetric.high, 50_000_932, 2)
})

test.for<{ name: string; distribution: Distribution; deviation?: number }>([
  { name: 'trapezoidal', distribution: { is: 'trapezoidal', value: 3, halfWidth: 2, topShare: 0.4 } },
  { name: 'triangular', distribution: { is: 'triangular', value: -1, halfWidth: 2 } },
  { name: 'arcsine', distribution: { is: 'arcsine', value: 5, halfWidth: 0.5 } },
  {
    name: 'curvilinear',
    distribution: { is: 'curvilinearTrapezoidal', value: 0, halfWidth: 1, halfWidthHalfWidth: 0.5 },
  },
  { name: 'exponential', distribution: { is: 'exponential', value: 4 } },
  { name: 'counted', distribution: { is: 'counted', count: 7 } },
  { name: 't', distribution: { is: 't', value: 2, scale: 1, degreesOfFreedom: 12 }, deviation: Math.sqrt(12 / 10) },
])('draws of $name have the moments of JCGM 101:2008, 6.4', ({ distribution, deviation }) => {
  const random = randomFrom(seed)
  const draws = Float64Array.from({ length: 200_000 }, () => drawFrom(distribution, random))
  const mean = draws.reduce((a, b) => a + b, 0) / draws.length
  const spread = Math.sqrt(draws.reduce((a, b) => a + (b - mean) ** 2, 0) / draws.length)
  const want = standardOf(distribution)
  const wide = deviation ?? want.standardUncertainty
  near(mean, want.estimate, (5 * wide) / Math.sqrt(draws.length))
  near(spread, wide, 0.015 * wide)
})

test('the same seed gives the same bytes, another seed others', () => {
  const inputs = [normal(0, 1), unit(1)]
  const evaluate: Evaluate = (x) => x[0] + x[1]
  expect(run(inputs, evaluate).sorted).toEqual(run(inputs, evaluate).sorted)
  const drawn = drawInputs(inputs, [])
  if (!drawn.ok) throw new Error('draws')
  const other = propagateMonteCarlo(evaluate, { draw: drawn.draw, count: 2 }, { seed: seed + 1 })
  expect(other.estimate).not.toBe(run(inputs, evaluate).estimate)
})

test('correlation that no distribution has, and correlation of what is not normal, are told', () => {
  const three = [normal(0, 1), normal(0, 1), normal(0, 1)]
  const impossible = [
    { first: 0, second: 1, coefficient: 0.9 },
    { first: 1, second: 2, coefficient: 0.9 },
    { first: 0, second: 2, coefficient: -0.9 },
  ]
  expect(drawInputs(three, impossible)).toEqual({ ok: false, fault: { why: 'impossible' } })
  const mixed = [normal(0, 1), unit(1)]
  expect(drawInputs(mixed, [{ first: 0, second: 1, coefficient: 0.5 }])).toEqual({
    ok: false,
    fault: { why: 'notNormal', input: 1 },
  })
})

test('trials that give no number are counted and left out', () => {
  const found = run([normal(0, 1)], (x) => Math.sqrt(x[0]), { digits: 1 })
  near(found.notFinite / found.trials, 0.5, 0.02)
  // E√|z| for a half normal is 2^¼ Γ(¾)/√π = 0.82218.
  near(found.estimate, 0.82218, 0.01)
})

test.for([
  { u: 0.0539, digits: 1, want: 0.005 },
  { u: 0.0539, digits: 2, want: 0.0005 },
  { u: 2, digits: 2, want: 0.05 },
  { u: 0.0998, digits: 1, want: 0.05 },
])('δ of u = $u at $digits digits is $want (JCGM 101:2008, 7.9.2)', ({ u, digits, want }) => {
  near(toleranceOf(u, digits), want, 1e-12)
})
