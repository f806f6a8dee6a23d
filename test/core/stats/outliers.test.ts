import { expect, test } from 'vitest'
import { grubbs, grubbsCritical } from '../../../src/core/stats/index.ts'
import {
  cochran,
  cochranCritical,
  generalisedEsd,
  grubbsPair,
  grubbsPairCritical,
  mandelHCritical,
  mandelKCritical,
} from '../../../src/core/stats/judging/index.ts'
import { comparing } from './comparing.ts'

// Cochran 1 % and 5 %: ISO 5725-2:2019 table 4 from memory, each value computed independently from the F distribution.
const cochranTable: readonly (readonly [n: number, p: number, one: number, five: number])[] = [
  [2, 3, 0.993, 0.967],
  [2, 4, 0.968, 0.906],
  [2, 5, 0.928, 0.841],
  [2, 6, 0.883, 0.781],
  [2, 7, 0.838, 0.727],
  [2, 8, 0.794, 0.68],
  [2, 9, 0.754, 0.638],
  [2, 10, 0.717, 0.602],
  [2, 12, 0.653, 0.541],
  [2, 15, 0.575, 0.471],
  [2, 20, 0.48, 0.389],
  [2, 40, 0.294, 0.237],
  [3, 2, 0.995, 0.975],
  [3, 3, 0.942, 0.871],
  [3, 5, 0.789, 0.684],
  [3, 8, 0.615, 0.516],
  [3, 10, 0.536, 0.445],
  [3, 20, 0.33, 0.27],
  [4, 2, 0.979, 0.939],
  [4, 5, 0.696, 0.598],
  [4, 8, 0.521, 0.438],
  [4, 10, 0.447, 0.373],
  [6, 2, 0.937, 0.877],
  [6, 5, 0.588, 0.506],
  [6, 10, 0.357, 0.303],
]

test.for(cochranTable)('Cochran with %i results in %i cells', ([replicates, cells, one, five]) => {
  expect(Math.abs(cochranCritical({ cells, replicates }, 0.01) - one)).toBeLessThan(0.0006)
  expect(Math.abs(cochranCritical({ cells, replicates }, 0.05) - five)).toBeLessThan(0.0006)
})

// ISO 5725-2:2019, table 5, one outlying value: 5 % and 1 %.
const grubbsTable: readonly (readonly [p: number, five: number, one: number])[] = [
  [3, 1.155, 1.155],
  [4, 1.481, 1.496],
  [5, 1.715, 1.764],
  [6, 1.887, 1.973],
  [7, 2.02, 2.139],
  [8, 2.126, 2.274],
  [9, 2.215, 2.387],
  [10, 2.29, 2.482],
  [12, 2.412, 2.636],
  [15, 2.549, 2.806],
  [20, 2.709, 3.001],
  [30, 2.908, 3.236],
]

test.for(grubbsTable)('Grubbs of %i values', ([count, five, one]) => {
  expect(Math.abs(grubbsCritical(count, 0.05) - five)).toBeLessThan(0.0015)
  expect(Math.abs(grubbsCritical(count, 0.01) - one)).toBeLessThan(0.0015)
})

// Grubbs & Beck 1972, one side 5 %.
test.for([
  [3, 1.153],
  [5, 1.671],
  [8, 2.032],
  [10, 2.176],
  [20, 2.557],
] as const)('Grubbs of %i values, one side', ([count, five]) => {
  expect(Math.abs(grubbsCritical(count, 0.05, 1) - five)).toBeLessThan(0.0015)
})

// ISO 5725-2:2019, table 5, two outlying values: 1 % and 5 %.
test.for([
  [4, 0, 0.0002],
  [5, 0.0018, 0.009],
  [6, 0.0116, 0.0349],
  [7, 0.0308, 0.0708],
  [8, 0.0563, 0.1101],
  [9, 0.0851, 0.1492],
  [10, 0.115, 0.1864],
  [11, 0.1448, 0.2213],
  [12, 0.1738, 0.2537],
  [15, 0.253, 0.3367],
  [20, 0.3585, 0.4391],
  [30, 0.4985, 0.5672],
] as const)('two outlying among %i values', ([count, one, five]) => {
  expect(grubbsPairCritical(count, 0.01)).toBe(one)
  expect(grubbsPairCritical(count, 0.05)).toBe(five)
})

test('the limits for a pair rise with the number of values, and end where the table does', () => {
  for (const significance of [0.01, 0.05] as const) {
    for (let count = 5; count <= 30; count++) {
      const [before, here] = [grubbsPairCritical(count - 1, significance), grubbsPairCritical(count, significance)]
      expect(here).toBeGreaterThan(before ?? Number.NaN)
    }
    expect(grubbsPairCritical(31, significance)).toBeUndefined()
  }
})

// NIST/SEMATECH e-Handbook, 1.3.5.17.1.
test('Grubbs finds 245.57 (G 2.46876, limits 2.032 on one side and 2.1266 on both)', () => {
  const { values } = comparing.grubbs
  const { high, highest } = grubbs(values)
  expect(values[highest]).toBe(245.57)
  expect(high).toBeCloseTo(2.46876, 4)
  expect(grubbsCritical(8, 0.05, 1)).toBeCloseTo(2.032, 3)
  expect(grubbsCritical(8, 0.05)).toBeCloseTo(2.1266, 4)
})

// Rosner 1983; limits computed independently, those printed in the e-Handbook agree to 0.001.
test('three outliers of 54 though the first two do not exceed their limits', () => {
  const { steps, outliers } = generalisedEsd(comparing.rosner.values, 10)
  expect(outliers).toBe(3)
  const want = [3.119, 2.943, 3.179, 2.81, 2.816, 2.848, 2.279, 2.31, 2.102, 2.067]
  const limits = [3.159, 3.151, 3.144, 3.136, 3.128, 3.12, 3.112, 3.103, 3.094, 3.085]
  for (const [i, { statistic, critical }] of steps.entries()) {
    expect(Math.abs(statistic - want[i])).toBeLessThan(0.002)
    expect(Math.abs(critical - limits[i])).toBeLessThan(0.002)
  }
})

// ISO 5725-2, example 3 (from memory; each figure computed independently).
test('creosote: Cochran and Grubbs at all five levels', () => {
  const levels = comparing.creosote.data
  const spread = levels.map((cells) => cochran(cells.map(([a, b]) => (a - b) ** 2 / 2)))
  const outer = levels.map((cells) => grubbs(cells.map(([a, b]) => (a + b) / 2)))
  const near = (seen: readonly number[], want: readonly number[]): void => {
    for (const [i, value] of seen.entries()) expect(Math.abs(value - want[i])).toBeLessThan(0.001)
  }
  near(
    spread.map(({ statistic }) => statistic),
    [0.566, 0.45, 0.492, 0.667, 0.636],
  )
  expect(spread[3].cell).toBe(6)
  near(
    outer.map(({ high }) => high),
    [1.949, 1.644, 2.502, 2.471, 2.102],
  )
  expect([outer[2].highest, outer[3].highest]).toEqual([0, 0])
  const without = levels[4].slice(1).map(([a, b]) => (a + b) / 2)
  near([grubbs(without).low], [2.189])
})

// ASTM E691, table of critical values; computed independently.
test.for([
  [5, 0.005, 1.74],
  [6, 0.005, 1.92],
  [8, 0.005, 2.15],
  [10, 0.005, 2.29],
  [15, 0.005, 2.47],
  [20, 0.005, 2.56],
  [8, 0.01, 2.06],
  [8, 0.05, 1.75],
] as const)('h of %i cells at %f', ([cells, significance, want]) => {
  expect(Math.abs(mandelHCritical(cells, significance) - want)).toBeLessThan(0.006)
})

test.for([
  [8, 0.005, [2.36, 2.06, 1.9, 1.79]],
  [6, 0.005, [2.22, 1.98, 1.84, 1.75]],
  [8, 0.01, [2.26, 1.96, 1.81, 1.72]],
  [8, 0.05, [1.88, 1.67, 1.56, 1.5]],
] as const)('k of %i cells at %f with 2 to 5 results', ([cells, significance, wanted]) => {
  for (const [i, want] of wanted.entries()) {
    expect(Math.abs(mandelKCritical({ cells, replicates: i + 2 }, significance) - want)).toBeLessThan(0.006)
  }
})

test('two outlying on one side leave little: 1 2 3 4 5 100 101 leaves 10/14936.857 (by hand)', () => {
  const { high, highest } = grubbsPair([1, 100, 2, 3, 101, 4, 5])
  expect(highest).toEqual([1, 4])
  expect(high).toBeCloseTo(10 / (20256 - 216 ** 2 / 7), 12)
})

test('equal values stand out nowhere', () => {
  expect(grubbs([2, 2, 2])).toEqual({ high: 0, low: 0, highest: 0, lowest: 0 })
  expect(grubbsPair([2, 2, 2, 2]).high).toBe(1)
  expect(cochran([0, 0]).statistic).toBe(0)
})

test('refuses too few', () => {
  expect(() => grubbs([1, 2])).toThrow(RangeError)
  expect(() => grubbsPair([1, 2, 3])).toThrow(RangeError)
  expect(() => cochran([1])).toThrow(RangeError)
  expect(() => cochranCritical({ cells: 3, replicates: 1 }, 0.05)).toThrow(RangeError)
  expect(() => mandelHCritical(2, 0.05)).toThrow(RangeError)
  expect(() => mandelKCritical({ cells: 3, replicates: Number.NaN }, 0.05)).toThrow(RangeError)
  expect(() => generalisedEsd([1, 2, 3], 2)).toThrow(RangeError)
})
