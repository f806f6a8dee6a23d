import { describe, expect, test } from 'vitest'
import {
  equivalencePower,
  powerOfTTest,
  replicatesForEquivalence,
  replicatesNeeded,
  smallestDifference,
} from '../../../src/core/plan/index.ts'

const usual = { difference: 1, repeatability: 1, significance: 0.05 }

describe('two-sample t', () => {
  test('power of 20 replicates at d = 1 (mpmath, closed form of the noncentral t)', () => {
    expect(powerOfTTest(20, usual)).toBeCloseTo(0.868953, 6)
  })

  // Real n by mpmath; Cohen's printed table is one short in three of the six whole numbers.
  test.for([
    { difference: 1, power: 0.9, exact: 22.0211 },
    { difference: 1, power: 0.9, sides: 1 as const, exact: 17.8471 },
    { difference: 0.2, power: 0.8, exact: 393.41 },
    { difference: 0.5, power: 0.8, exact: 63.77 },
    { difference: 0.8, power: 0.8, exact: 25.52 },
  ])('n for d = $difference at power $power', ({ exact, ...question }) => {
    const answer = replicatesNeeded({ ...usual, ...question })
    expect(Math.abs(answer.exact - exact)).toBeLessThan(exact > 100 ? 0.01 : 0.006)
    expect(answer.replicates).toBe(Math.ceil(exact))
    expect(answer.power).toBeGreaterThanOrEqual(question.power)
  })

  test.for([
    [0.2, 586],
    [0.5, 96],
    [0.8, 39],
  ] as const)('n for d = %s at 1 % (mpmath)', ([difference, n]) => {
    expect(replicatesNeeded({ difference, repeatability: 1, significance: 0.01, power: 0.8 }).replicates).toBe(n)
  })

  // Noncentral t, two-sided 5 %, per sample at power 80/90 %; worked out apart from this program.
  const differences = [0.05, 0.1, 0.2, 0.25]
  test.for<readonly [number, string]>([
    [0.03, '7/9 3/4 2/3 2/2'],
    [0.05, '17/23 6/7 3/3 3/3'],
    [0.08, '42/55 12/15 4/5 3/4'],
    [0.1, '64/86 17/23 6/7 4/5'],
    [0.15, '143/191 37/49 10/13 7/9'],
    [0.2, '253/338 64/86 17/23 12/15'],
    [0.25, '394/527 100/133 26/34 17/23'],
  ])('replicates at a scatter of %s', ([repeatability, row]) => {
    const n = (difference: number, power: number): number =>
      replicatesNeeded({ difference, repeatability, significance: 0.05, power }).replicates
    expect(differences.map((difference) => `${n(difference, 0.8)}/${n(difference, 0.9)}`).join(' ')).toBe(row)
  })

  // Roots of scipy's noncentral t, to four digits.
  test.for([
    [3, 3.071],
    [4, 2.381],
    [5, 2.024],
    [6, 1.796],
    [8, 1.507],
    [10, 1.325],
  ] as const)('%s replicates see %s standard deviations with 80 %', ([n, seen]) => {
    expect(smallestDifference(n, { repeatability: 1, significance: 0.05, power: 0.8 })).toBeCloseTo(seen, 3)
  })

  test('three replicates at 10 % see only a 31 % difference', () => {
    expect(smallestDifference(3, { repeatability: 0.1, significance: 0.05, power: 0.8 })).toBeCloseTo(0.307, 3)
  })

  test('more replicates never see less', () => {
    const powers = [2, 3, 5, 8, 20, 100].map((n) => powerOfTTest(n, { ...usual, difference: 0.6 }))
    expect(powers).toEqual([...powers].sort((a, b) => a - b))
  })

  test.for([{ difference: -1 }, { difference: Number.NaN }, { repeatability: 0 }, { significance: 0.7 }])(
    'refuses %o',
    (wrong) => {
      expect(() => replicatesNeeded({ ...usual, power: 0.8, ...wrong })).toThrow(RangeError)
    },
  )
})

describe('equivalence', () => {
  // Sample sizes of two-period bioequivalence studies (margins 0.80 to 1.25, true ratio 0.95), as widely tabled; from memory.
  test.for([
    { cv: 0.2, n: 20, power: 0.83468 },
    { cv: 0.25, n: 28, power: 0.807439 },
    { cv: 0.3, n: 40, power: 0.815845 },
  ])('power of $n subjects at a scatter of $cv', ({ cv, n, power }) => {
    const seen = equivalencePower({
      lowMargin: Math.log(0.8),
      highMargin: Math.log(1.25),
      difference: Math.log(0.95),
      standardError: Math.sqrt(Math.log(1 + cv * cv)) * Math.sqrt(2 / n),
      degreesOfFreedom: n - 2,
      significance: 0.05,
    })
    expect(seen).toBeCloseTo(power, 5)
  })

  test('at the margin itself the test errs no more often than its level', () => {
    const power = equivalencePower({
      lowMargin: -1,
      highMargin: 1,
      difference: 1,
      standardError: 0.1,
      degreesOfFreedom: 20,
      significance: 0.05,
    })
    expect(power).toBeCloseTo(0.05, 6)
  })

  test('the least number is found: one fewer would not do', () => {
    const question = { margin: 0.2, repeatability: 0.1, power: 0.8, significance: 0.05 }
    const { replicates, power } = replicatesForEquivalence(question)
    expect(power).toBeGreaterThanOrEqual(0.8)
    const one = equivalencePower({
      lowMargin: -0.2,
      highMargin: 0.2,
      difference: 0,
      standardError: 0.1 * Math.sqrt(2 / (replicates - 1)),
      degreesOfFreedom: 2 * (replicates - 1) - 2,
      significance: 0.05,
    })
    expect(one).toBeLessThan(0.8)
  })
})
