import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boundedLeastSquares, strongCorrelations } from '../../../src/core/curve/boundedLeastSquares.ts'
import { withCentralDifferences } from '../../../src/core/curve/centralDifferences.ts'
import type { ResidualProblem } from '../../../src/core/curve/residualProblem.ts'
import { agreementDigits, fewestDigits } from '../numeric/agreementDigits.ts'
import { nistModels } from './nistModels.ts'

const folder = new URL('../../data/nist/nonlinear/', import.meta.url)

interface Certified {
  readonly name: string
  readonly parameters: readonly string[]
  readonly start1: readonly number[]
  readonly start2: readonly number[]
  readonly certified: readonly number[]
  readonly certifiedSd: readonly number[]
  readonly rss: number
  readonly df: number
  readonly x: readonly (number | readonly [number, number])[]
  readonly y: readonly number[]
}

const problems: readonly Certified[] = readdirSync(folder).map((file) =>
  JSON.parse(readFileSync(new URL(file, folder), 'utf8')),
)

const everywhere = (size: number, value: number): Float64Array => new Float64Array(size).fill(value)

function problemOf({ name, parameters, certified, x, y: given }: Certified): ResidualProblem {
  const model = nistModels[name]
  const y = name === 'Nelson' ? given.map(Math.log) : given
  const size = parameters.length
  return withCentralDifferences(
    {
      rows: y.length,
      names: parameters,
      lower: everywhere(size, Number.NEGATIVE_INFINITY),
      upper: everywhere(size, Number.POSITIVE_INFINITY),
      evaluate(b, residuals) {
        for (const [i, at] of x.entries()) {
          residuals[i] = y[i] - (typeof at === 'number' ? model(b, at, 0) : model(b, at[0], at[1]))
        }
      },
    },
    certified,
  )
}

function standardErrors(fit: { sumOfSquares: number; degreesOfFreedom: number; inverseGram: Float64Array }): number[] {
  const variance = fit.sumOfSquares / fit.degreesOfFreedom
  const size = Math.sqrt(fit.inverseGram.length)
  return Array.from({ length: size }, (_, j) => Math.sqrt(variance * fit.inverseGram[j * size + j]))
}

describe('nonlinear problems (NIST Statistical Reference Datasets)', () => {
  test('21 are here', () => expect(problems).toHaveLength(21))

  // The residuals of Lanczos1 are rounding (its rss is 1.4e-25), so neither they nor the standard errors can agree.
  const rounded = (name: string): boolean => name === 'Lanczos1'

  test.for(problems)('$name: sum of squares and standard errors at the certified values', (problem) => {
    if (rounded(problem.name)) return
    const fit = boundedLeastSquares(problemOf(problem), problem.certified, { iterations: 0 })
    expect(agreementDigits(fit.sumOfSquares, problem.rss)).toBeGreaterThan(9)
    expect(fewestDigits(standardErrors(fit), problem.certifiedSd)).toBeGreaterThan(6)
    expect(fit.degreesOfFreedom).toBe(problem.df)
  })

  test.for(problems)('$name from the near start: eight digits', (problem) => {
    const fit = boundedLeastSquares(problemOf(problem), problem.start2)
    expect(fit.end.why).toBe('converged')
    expect(fewestDigits(fit.parameters, problem.certified)).toBeGreaterThan(8)
    if (rounded(problem.name)) return
    expect(fewestDigits(standardErrors(fit), problem.certifiedSd)).toBeGreaterThan(8)
    expect(agreementDigits(fit.sumOfSquares, problem.rss)).toBeGreaterThan(9)
  })

  test.for(problems)('$name from the far start: eight digits, or it says that it failed', (problem) => {
    const fit = boundedLeastSquares(problemOf(problem), problem.start1)
    if (problem.name === 'MGH10') {
      expect(fit.end.why).toBe('stepLimit')
      return
    }
    expect(fit.end.why).toBe('converged')
    expect(fewestDigits(fit.parameters, problem.certified)).toBeGreaterThan(8)
    if (!rounded(problem.name)) expect(fewestDigits(standardErrors(fit), problem.certifiedSd)).toBeGreaterThan(8)
  })
})

const page = readFileSync(new URL('../../../docs/curve-fit.md', import.meta.url), 'utf8')

test.for(problems)('docs/curve-fit.md promises no more digits for $name than are reached', (problem) => {
  const row = page.split('\n').find((line) => line.startsWith(`| ${problem.name} |`)) ?? ''
  const promised = row.split('|').slice(2, 6)
  expect(promised).toHaveLength(4)
  const reached = [problem.start2, problem.start1].flatMap((start) => {
    const fit = boundedLeastSquares(problemOf(problem), start)
    return [fewestDigits(fit.parameters, problem.certified), fewestDigits(standardErrors(fit), problem.certifiedSd)]
  })
  for (const [i, text] of promised.entries()) {
    if (/says so|–/.test(text)) continue
    expect(Number(text)).toBeGreaterThan(0)
    expect(reached[i]).toBeGreaterThanOrEqual(Number(text))
  }
})

/** y = a e^(−b x) exactly, for what happens at bounds. */
function decay(lower: number[], upper: number[]): ResidualProblem {
  const x = [0, 1, 2, 3, 4]
  return {
    rows: x.length,
    names: ['a', 'b'],
    lower: Float64Array.from(lower),
    upper: Float64Array.from(upper),
    evaluate([a, b], residuals, jacobian) {
      for (const [i, at] of x.entries()) {
        const e = Math.exp(-b * at)
        residuals[i] = 3 * Math.exp(-0.5 * at) - a * e
        if (jacobian === undefined) continue
        jacobian[i] = -e
        jacobian[x.length + i] = a * at * e
      }
    },
  }
}

describe('bounds and ends', () => {
  test('an inner solution does not feel the box', () => {
    const fit = boundedLeastSquares(decay([0, 0], [10, 10]), [1, 1])
    expect(fit.end.why).toBe('converged')
    expect(fewestDigits(fit.parameters, [3, 0.5])).toBeGreaterThan(12)
  })

  test('a parameter at its bound is named and leaves the covariance', () => {
    const fit = boundedLeastSquares(decay([0, 0.8], [10, 10]), [1, 1])
    expect(fit.end).toMatchObject({ why: 'atBound', parameter: 'b', bound: 0.8 })
    expect(fit.held).toEqual(['b'])
    expect(fit.degreesOfFreedom).toBe(4)
    expect(fit.inverseGram[3]).toBe(0)
    // Linear in a for b = 0.8: a = Σ y e / Σ e².
    const e = [0, 1, 2, 3, 4].map((x) => Math.exp(-0.8 * x))
    const top = e.reduce((sum, value, x) => sum + value * 3 * Math.exp(-0.5 * x), 0)
    const bottom = e.reduce((sum, value) => sum + value * value, 0)
    expect(fit.parameters[0]).toBeCloseTo(top / bottom, 12)
    expect(fit.inverseGram[0]).toBeCloseTo(1 / bottom, 12)
  })

  test('parameters that cannot be told apart are named', () => {
    const problem: ResidualProblem = {
      rows: 3,
      names: ['a', 'b', 'c'],
      lower: everywhere(3, -9),
      upper: everywhere(3, 9),
      evaluate([a, b, c], residuals, jacobian) {
        for (let i = 0; i < 3; i++) residuals[i] = a + b + c * i - i * i
        jacobian?.set([1, 1, 1, 1, 1, 1, 0, 1, 2])
      },
    }
    const fit = boundedLeastSquares(problem, [0, 0, 0])
    expect(fit.end).toMatchObject({ why: 'singular', parameters: ['a', 'b'] })
  })

  test('a start outside the domain is said', () => {
    const problem = {
      ...decay([0, 0], [10, 10]),
      evaluate: (_: Float64Array, r: Float64Array) => void r.fill(Number.NaN),
    }
    expect(boundedLeastSquares(problem, [1, 1]).end.why).toBe('stepLimit')
  })

  test.for([
    { start: [Number.NaN, 1], lower: [0, 0], says: 'start of a' },
    { start: [1, 1], lower: [0, 20], says: 'bounds of b cross' },
  ])('refuses $says', ({ start, lower, says }) => {
    expect(() => boundedLeastSquares(decay(lower, [10, 10]), start)).toThrow(says)
  })

  test('whatever the box, the solution lies inside it and no corner is lower', () => {
    const side = fc.tuple(fc.double({ min: 0.01, max: 4, noNaN: true }), fc.double({ min: 0.01, max: 4, noNaN: true }))
    fc.assert(
      fc.property(side, side, ([a0, a1], [b0, b1]) => {
        const lower = [Math.min(a0, a1), Math.min(b0, b1)]
        const upper = [Math.max(a0, a1), Math.max(b0, b1)]
        const problem = decay(lower, upper)
        const fit = boundedLeastSquares(problem, [1, 1])
        const residuals = new Float64Array(5)
        for (const a of [lower[0], upper[0]]) {
          for (const b of [lower[1], upper[1]]) {
            problem.evaluate(Float64Array.of(a, b), residuals)
            const corner = residuals.reduce((sum, r) => sum + r * r, 0)
            expect(fit.sumOfSquares).toBeLessThanOrEqual(corner * (1 + 1e-9) + 1e-20)
          }
        }
        expect(fit.parameters[0]).toBeGreaterThanOrEqual(lower[0])
        expect(fit.parameters[1]).toBeLessThanOrEqual(upper[1])
      }),
    )
  })
})

test('only correlations over the threshold are listed', () => {
  const covariance = Float64Array.of(4, 1.9, 0, 1.9, 1, 0, 0, 0, 0)
  expect(strongCorrelations(covariance, ['a', 'b', 'c'], 0.9)).toEqual([{ first: 'a', second: 'b', value: 0.95 }])
  expect(strongCorrelations(covariance, ['a', 'b', 'c'], 0.96)).toEqual([])
})
