import { expect, test } from 'vitest'
import { cholesky } from '../../../src/core/numeric/index.ts'
import { oneWayAnova } from '../../../src/core/stats/index.ts'
import { type MixedProblem, mixedModel } from '../../../src/core/stats/judging/index.ts'
import { comparing } from './comparing.ts'

interface OneWay {
  readonly name: string
  readonly groups: readonly (readonly number[])[]
  readonly between: number
  readonly within: number
  readonly mean: number
  readonly standardError: number
  readonly criterion: number
}

// Data and printed results from memory; the variances follow from the analysis of variance in balanced data (checked below).
const oneWay: readonly OneWay[] = [
  {
    name: 'yield of dyestuff by batch (Davies & Goldsmith 1972)',
    groups: [
      [1545, 1440, 1440, 1520, 1580],
      [1540, 1555, 1490, 1560, 1495],
      [1595, 1550, 1605, 1510, 1560],
      [1445, 1440, 1595, 1465, 1545],
      [1595, 1630, 1515, 1635, 1625],
      [1520, 1455, 1450, 1480, 1445],
    ],
    ...{ between: 42.0, within: 49.51, mean: 1527.5, standardError: 19.38, criterion: 319.6543 },
  },
  {
    name: 'travel time on rails (Pinheiro & Bates 2000, table 1.1)',
    groups: [
      [55, 53, 54],
      [26, 37, 32],
      [78, 91, 85],
      [92, 100, 96],
      [49, 51, 50],
      [80, 85, 83],
    ],
    ...{ between: 24.805, within: 4.0208, mean: 66.5, standardError: 10.171, criterion: 122.177 },
  },
]

const oneWayProblem = (groups: readonly (readonly number[])[]): MixedProblem => ({
  values: groups.flat(),
  design: groups.flat().map(() => [1]),
  causes: [{ name: 'group', levels: groups.flatMap((group, g) => group.map(() => g)) }],
})

test.for(oneWay)('$name', ({ groups, between, within, mean, standardError, criterion }) => {
  const fit = mixedModel(oneWayProblem(groups))
  const { f, residualDeviation, betweenFreedom } = oneWayAnova(groups)
  const square = residualDeviation ** 2
  expect(fit.end).toBe('converged')
  expect(fit.residualVariance / square).toBeCloseTo(1, 6)
  expect(fit.variances[0] / ((square * (f - 1)) / groups[0].length)).toBeCloseTo(1, 6)
  expect(Math.abs(Math.sqrt(fit.variances[0]) / between - 1)).toBeLessThan(1e-4)
  expect(Math.abs(Math.sqrt(fit.residualVariance) / within - 1)).toBeLessThan(1e-4)
  expect(fit.criterion).toBeCloseTo(criterion, 3)
  const whole = fit.contrast([1])
  expect(whole.value).toBeCloseTo(mean, 6)
  expect(Math.abs(whole.standardError / standardError - 1)).toBeLessThan(2e-4)
  // A mean of balanced groups has the freedom of their number less one, exactly.
  expect(whole.degreesOfFreedom).toBeCloseTo(betweenFreedom, 4)
})

test('readings in pairs are the paired t test: the sleep data with persons as blocks', () => {
  const { a, b, paired } = comparing.sleep
  const persons = a.map((_, i) => i)
  const fit = mixedModel({
    values: [...a, ...b],
    design: [...a.map(() => [1, 0]), ...b.map(() => [0, 1])],
    causes: [{ name: 'person', levels: [...persons, ...persons] }],
  })
  const { value, standardError, degreesOfFreedom } = fit.contrast([1, -1])
  expect(value / standardError).toBeCloseTo(paired.t, 6)
  expect(degreesOfFreedom).toBeCloseTo(paired.df, 5)
})

test('two crossed causes in a full table: the mean squares say it (closed form)', () => {
  // 3 days × 4 operators, one result each.
  const table = [
    [10.1, 12.2, 9.3, 14.8],
    [11.4, 14.1, 10.9, 15.2],
    [8.2, 12.6, 8.8, 13.1],
  ]
  const days = table.map((row) => row.reduce((sum, x) => sum + x, 0) / 4)
  const operators = [0, 1, 2, 3].map((j) => table.reduce((sum, row) => sum + row[j], 0) / 3)
  const grand = days.reduce((sum, x) => sum + x, 0) / 3
  const squaresOf = (means: readonly number[]): number => means.reduce((sum, m) => sum + (m - grand) ** 2, 0)
  let rest = 0
  for (const [i, row] of table.entries()) {
    for (const [j, x] of row.entries()) rest += (x - days[i] - operators[j] + grand) ** 2
  }
  const [msDay, msOperator, msRest] = [(4 * squaresOf(days)) / 2, (3 * squaresOf(operators)) / 3, rest / 6]
  const fit = mixedModel({
    values: table.flat(),
    design: table.flat().map(() => [1]),
    causes: [
      { name: 'day', levels: table.flatMap((row, i) => row.map(() => i)) },
      { name: 'operator', levels: table.flatMap((row) => row.map((_, j) => j)) },
    ],
  })
  expect(fit.residualVariance).toBeCloseTo(msRest, 5)
  expect(fit.variances[0]).toBeCloseTo((msDay - msRest) / 4, 5)
  expect(fit.variances[1]).toBeCloseTo((msOperator - msRest) / 3, 5)
})

/** −2 log density of what is left of the values without the fixed part, by an orthonormal basis of its complement. */
function plainCriterion({ values, causes }: MixedProblem, variances: readonly number[], mean: number): number {
  const n = values.length
  // Helmert contrasts: the complement of a constant.
  const basis = Array.from({ length: n - 1 }, (_, k) =>
    values.map((_, i) => (i <= k ? 1 : i === k + 1 ? -(k + 1) : 0) / Math.sqrt((k + 1) * (k + 2))),
  )
  const covariance = (i: number, j: number): number =>
    causes.reduce((sum, { levels }, c) => sum + (levels[i] === levels[j] ? variances[c] : 0), 0) +
    (i === j ? variances[causes.length] : 0)
  const matrix = basis.flatMap((a) =>
    basis.map((b) => a.reduce((sum, x, i) => sum + x * b.reduce((inner, y, j) => inner + y * covariance(i, j), 0), 0)),
  )
  const factor = cholesky(matrix, n - 1)
  if (factor === undefined) throw new Error('not positive definite')
  const left = basis.map((a) => a.reduce((sum, x, i) => sum + x * (values[i] - mean), 0))
  let sum = (n - 1) * Math.log(2 * Math.PI)
  for (let a = 0; a < n - 1; a++) {
    for (let k = 0; k < a; k++) left[a] -= factor[a * (n - 1) + k] * left[k]
    left[a] /= factor[a * (n - 1) + a]
    sum += left[a] ** 2 + 2 * Math.log(factor[a * (n - 1) + a])
  }
  // The density of the contrasts and the restricted likelihood differ by log det XᵀX, and that is ln n.
  return sum + Math.log(n)
}

test('unlike numbers and two causes: the plain density of the contrasts is the same, and nowhere near is it better', () => {
  const problem: MixedProblem = {
    values: [4.1, 4.4, 3.8, 5.2, 5.9, 5.1, 5.5, 3.1, 2.9, 4.8, 6.3],
    design: Array.from({ length: 11 }, () => [1]),
    causes: [
      { name: 'day', levels: [0, 0, 0, 1, 1, 1, 1, 2, 2, 3, 3] },
      { name: 'ball set', levels: [0, 1, 0, 1, 2, 1, 0, 0, 2, 0, 2] },
    ],
  }
  const fit = mixedModel(problem)
  const best = [...fit.variances, fit.residualVariance]
  expect(plainCriterion(problem, best, 0)).toBeCloseTo(fit.criterion, 8)
  for (const [k, variance] of best.entries()) {
    for (const factor of [0.8, 0.95, 1.05, 1.25]) {
      const near = best.map((value, l) => (l === k ? Math.max(variance, 1e-3) * factor : value))
      expect(plainCriterion(problem, near, 0)).toBeGreaterThan(fit.criterion - 1e-9)
    }
  }
})

test('a cause that makes no scatter has a variance of zero, and its freedom goes to the residual', () => {
  const groups = [
    [1, 5, 9],
    [2, 5, 8],
    [1.5, 5, 8.5],
    [5, 0, 10],
  ]
  const fit = mixedModel(oneWayProblem(groups))
  expect(fit.variances).toEqual([0])
  expect(fit.contrast([1]).degreesOfFreedom).toBeCloseTo(11, 6)
})

test('refuses what leaves no residual', () => {
  expect(() => mixedModel({ values: [1, 2], design: [[1], [1]], causes: [{ name: 'g', levels: [0, 1] }] })).toThrow(
    RangeError,
  )
  expect(() => mixedModel({ values: [1], design: [[1]], causes: [] })).toThrow(RangeError)
  expect(() => mixedModel({ values: [2, 2, 2], design: [[1], [1], [1]], causes: [] })).toThrow(/scatter/)
})
