import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { mean, summary } from '../../../src/core/stats/index.ts'
import { agreementDigits } from '../numeric/agreementDigits.ts'

interface Univariate {
  readonly name: string
  readonly mean: number
  readonly sd: number
  readonly autocorrelationLag1: number
  readonly y: readonly number[]
}

const folder = new URL('../../data/nist/univariate/', import.meta.url)
const problems = readdirSync(folder).map((file): Univariate => JSON.parse(readFileSync(new URL(file, folder), 'utf8')))

// 12 digits asked; the data of NumAcc3 and NumAcc4 themselves lose the rest in doubles.
const fewerDigits: Record<string, readonly [sd: number, lagOne: number]> = { NumAcc3: [9, 10], NumAcc4: [8, 10] }

test.for(problems)('$name (NIST StRD univariate, certified to 15 digits)', (problem) => {
  const { count, mean: centre, standardDeviation, lagOneCorrelation } = summary(problem.y)
  const [sd, lagOne] = fewerDigits[problem.name] ?? [12, 12]
  expect(count).toBe(problem.y.length)
  expect(agreementDigits(centre, problem.mean)).toBeGreaterThanOrEqual(12)
  expect(agreementDigits(mean(problem.y), problem.mean)).toBeGreaterThanOrEqual(12)
  expect(agreementDigits(standardDeviation, problem.sd)).toBeGreaterThanOrEqual(sd)
  expect(agreementDigits(lagOneCorrelation, problem.autocorrelationLag1)).toBeGreaterThanOrEqual(lagOne)
})

test('all eight certified sets were read', () => expect(problems).toHaveLength(8))

test('shift and scale move mean and deviation alike and leave the correlation', () => {
  const reading = fc.double({ min: -1000, max: 1000, noNaN: true })
  fc.assert(
    fc.property(
      fc.array(reading, { minLength: 3, maxLength: 40 }),
      reading,
      fc.constantFrom(0.5, 2, 8),
      (y, shift, by) => {
        const before = summary(y)
        fc.pre(before.standardDeviation > 1e-3)
        const after = summary(y.map((value) => by * value + shift))
        expect(Math.abs(after.mean - (by * before.mean + shift))).toBeLessThan(1e-9)
        expect(after.standardDeviation / (by * before.standardDeviation)).toBeCloseTo(1, 8)
        expect(after.lagOneCorrelation).toBeCloseTo(before.lagOneCorrelation, 7)
      },
    ),
  )
})

test('one value has no deviation, none is refused', () => {
  expect(summary([3])).toMatchObject({ count: 1, mean: 3, standardDeviation: Number.NaN })
  expect(() => summary([])).toThrow(RangeError)
  expect(() => mean([])).toThrow('a mean needs at least one value')
})
