import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { oneWayAnova } from '../../../src/core/stats/index.ts'
import { agreementDigits } from '../numeric/agreementDigits.ts'

interface Anova {
  readonly name: string
  readonly F: number
  readonly dfBetween: number
  readonly dfWithin: number
  readonly residualSd: number
  readonly groups: readonly (readonly number[])[]
}

const folder = new URL('../../data/nist/anova/', import.meta.url)
const problems = readdirSync(folder).map((file): Anova => JSON.parse(readFileSync(new URL(file, folder), 'utf8')))

// The data of SmLs04 to 09 carry 7 and 13 equal leading digits, which doubles lose.
const digitsOf = (name: string): number => (/SmLs0[789]/.test(name) ? 2.5 : /SmLs0[456]|AtmWtAg/.test(name) ? 8 : 12)

test.for(problems)('$name: F to the digits asked (NIST StRD one-way anova)', (problem) => {
  const table = oneWayAnova(problem.groups)
  expect([table.betweenFreedom, table.withinFreedom]).toEqual([problem.dfBetween, problem.dfWithin])
  expect(agreementDigits(table.f, problem.F)).toBeGreaterThanOrEqual(digitsOf(problem.name))
  expect(agreementDigits(table.residualDeviation, problem.residualSd)).toBeGreaterThanOrEqual(digitsOf(problem.name))
})

test('all eleven certified sets were read', () => expect(problems).toHaveLength(11))

test('two groups give the square of t: F 13.5, p 0.021312 with 1 and 4 degrees of freedom (by hand)', () => {
  const { f, p, betweenSquares, withinSquares } = oneWayAnova([
    [1, 2, 3],
    [4, 5, 6],
  ])
  expect(f).toBeCloseTo(13.5, 12)
  expect([betweenSquares, withinSquares]).toEqual([13.5, 4])
  expect(Math.abs(p - 0.021312)).toBeLessThan(5e-7)
})

test('refuses one group, an empty group and no replicate', () => {
  for (const groups of [[[1, 2]], [[1, 2], []], [[1], [2]]]) expect(() => oneWayAnova(groups)).toThrow(RangeError)
})
