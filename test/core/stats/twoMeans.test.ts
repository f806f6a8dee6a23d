import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { oneWayAnova, studentTQuantile, summary } from '../../../src/core/stats/index.ts'
import {
  bartlett,
  equivalenceTest,
  levene,
  pairedDifference,
  pooledDifference,
  type SampleNumbers,
  tTest,
  tukeyKramer,
  welchDifference,
} from '../../../src/core/stats/judging/index.ts'
import { comparing } from './comparing.ts'

const numbers = (values: readonly number[]): SampleNumbers => summary(values)

test.for(comparing.welch.pairs)('Welch: t $t', ({ a, b, t, df, p }) => {
  const found = welchDifference(numbers(a), numbers(b))
  expect(tTest(found).t).toBeCloseTo(t, 6)
  expect(found.degreesOfFreedom).toBeCloseTo(df, 6)
  expect(tTest(found).p).toBeCloseTo(p, 6)
})

test("Student's sleep data, by Welch and in pairs", () => {
  const { a, b, welch, paired } = comparing.sleep
  const apart = welchDifference(numbers(a), numbers(b))
  expect(tTest(apart).t).toBeCloseTo(welch.t, 6)
  expect(apart.degreesOfFreedom).toBeCloseTo(welch.df, 6)
  const together = pairedDifference(a, b)
  expect(tTest(together).t).toBeCloseTo(paired.t, 6)
  expect(tTest(together).p).toBeCloseTo(paired.p, 6)
  expect(together.degreesOfFreedom).toBe(9)
})

// NIST/SEMATECH e-Handbook, 1.3.5.3; figures to five places computed independently.
test('two means from their summaries', () => {
  const first = { mean: 20.14458, standardDeviation: 6.4147, count: 249 }
  const second = { mean: 30.48101, standardDeviation: 6.10771, count: 79 }
  const pooled = pooledDifference(first, second)
  expect(pooled.standardError / Math.sqrt(1 / 249 + 1 / 79)).toBeCloseTo(6.3426, 4)
  expect(tTest(pooled).t).toBeCloseTo(-12.62059, 4)
  expect(pooled.degreesOfFreedom).toBe(326)
  const welch = welchDifference(first, second)
  expect(tTest(welch).t).toBeCloseTo(-12.94627, 4)
  expect(welch.degreesOfFreedom).toBeCloseTo(136.875, 3)
  expect(studentTQuantile(0.975, 326)).toBeCloseTo(1.9673, 4)
})

// Lakens 2017, Soc. Psychol. Personal. Sci. 8:355, example of two one-sided tests; t and p to more places computed independently.
test('equivalent within half a standard deviation, though no difference is seen', () => {
  const first = { mean: 5.25, standardDeviation: 0.95, count: 95 }
  const second = { mean: 5.22, standardDeviation: 0.83, count: 89 }
  const found = welchDifference(first, second)
  const bound = 0.43 * Math.sqrt((0.95 ** 2 + 0.83 ** 2) / 2)
  const { t, p, interval, equivalent } = equivalenceTest(found, [-bound, bound])
  expect(found.degreesOfFreedom).toBeCloseTo(181.134, 3)
  expect([t[0], t[1]].map((one) => Number(one.toFixed(4)))).toEqual([3.1497, -2.6928])
  expect([p[0], p[1]].map((one) => Number(one.toFixed(4)))).toEqual([0.001, 0.0039])
  expect([interval[0], interval[1]].map((one) => Number(one.toFixed(4)))).toEqual([-0.1871, 0.2471])
  expect(equivalent).toBe(true)
  expect(tTest(found).t).toBeCloseTo(0.22848, 4)
  expect(tTest(found).p).toBeCloseTo(0.8195, 4)
  expect(equivalenceTest(found, [-0.2, 0.2]).equivalent).toBe(false)
})

// NIST StRD SiRstv; Bartlett, Levene and Tukey computed independently.
test('five instruments of one resistivity: scatter alike, no two told apart', () => {
  const { groups } = JSON.parse(
    readFileSync(new URL('../../data/nist/anova/SiRstv.json', import.meta.url), 'utf8'),
  ) as { groups: number[][] }
  expect(bartlett(groups).statistic).toBeCloseTo(1.14811, 5)
  expect(bartlett(groups).p).toBeCloseTo(0.886565, 5)
  expect(levene(groups).statistic).toBeCloseTo(0.226603, 5)
  expect(levene(groups).p).toBeCloseTo(0.92028, 5)
  const { residualDeviation, withinFreedom } = oneWayAnova(groups)
  const differences = groups.flatMap((a, i) =>
    groups.slice(i + 1).map((b) => ({
      value: summary(a).mean - summary(b).mean,
      standardError: residualDeviation * Math.sqrt(1 / a.length + 1 / b.length),
      degreesOfFreedom: withinFreedom,
    })),
  )
  const pairs = tukeyKramer(differences, groups.length)
  expect(Math.min(...pairs.map(({ p }) => p))).toBeCloseTo(0.552878, 5)
  expect(pairs.every(({ low, high }) => low < 0 && high > 0)).toBe(true)
})

test('two groups: Tukey is the t test', () => {
  const [{ low, high, p }] = tukeyKramer([{ value: 3, standardError: 1.5, degreesOfFreedom: 7 }], 2)
  const half = 1.5 * studentTQuantile(0.975, 7)
  expect(low).toBeCloseTo(3 - half, 7)
  expect(high).toBeCloseTo(3 + half, 7)
  expect(p).toBeCloseTo(tTest({ difference: 3, standardError: 1.5, degreesOfFreedom: 7 }).p, 8)
})

test('refuses a single value, margins that do not rise, and pairs of unlike length', () => {
  const one = { mean: 1, standardDeviation: 0, count: 1 }
  expect(() => welchDifference(one, one)).toThrow(RangeError)
  expect(() => pairedDifference([1, 2], [1])).toThrow(RangeError)
  expect(() => equivalenceTest({ difference: 0, standardError: 1, degreesOfFreedom: 3 }, [1, 1])).toThrow(RangeError)
  expect(() => bartlett([[1, 2], [3]])).toThrow(RangeError)
})
