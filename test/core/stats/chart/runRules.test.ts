import { describe, expect, test } from 'vitest'
import { type RunRuleName, ruleSets, runAlarms, runLength } from '../../../../src/core/stats/judging/index.ts'

/** Series that meet one rule of Nelson 1984 (J. Qual. Technol. 16:237) or of the Western Electric handbook, and the value at which they do. */
const patterns: readonly { rule: RunRuleName; z: readonly number[]; at: number }[] = [
  { rule: 'beyondThree', z: [0.1, -3.01, 0.2], at: 1 },
  { rule: 'twoOfThree', z: [0, 2.1, 0.3, 2.2], at: 3 },
  { rule: 'fourOfFive', z: [-1.2, -1.1, 0.4, -1.3, -1.4], at: 4 },
  { rule: 'eightOneSide', z: [0.1, 0.2, 0.1, 0.3, 0.2, 0.1, 0.2, 0.1], at: 7 },
  { rule: 'nineOneSide', z: [-0.1, -0.2, -0.1, -0.3, -0.2, -0.1, -0.2, -0.1, -0.3], at: 8 },
  { rule: 'sixRunning', z: [-0.5, -0.3, -0.1, 0.1, 0.3, 0.5], at: 5 },
  {
    rule: 'fourteenAlternating',
    z: [0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1, -0.1],
    at: 13,
  },
  {
    rule: 'fifteenInside',
    z: [0.5, -0.5, 0.4, 0.3, -0.2, 0.1, 0.6, -0.5, 0.4, 0.2, -0.3, 0.1, 0.9, -0.9, 0.2],
    at: 14,
  },
  { rule: 'eightOutside', z: [1.1, -1.2, 1.3, 1.1, -1.4, -1.1, 1.2, 1.3], at: 7 },
]

test.for(patterns)('$rule is met at value $at and not before', ({ rule, z, at }) => {
  expect(runAlarms(z, [rule]).map((alarm) => alarm.at)).toEqual([at])
  expect(runAlarms(z.slice(0, at), [rule])).toEqual([])
  expect(
    runAlarms(
      z.map((value) => -value),
      [rule],
    ),
  ).toHaveLength(1)
})

test('two of three on different sides, or a pair whose last value lies inside, is no alarm', () => {
  expect(runAlarms([2.1, 0, -2.2], ['twoOfThree'])).toEqual([])
  expect(runAlarms([2.1, 2.2, 0], ['twoOfThree']).map(({ at }) => at)).toEqual([1])
})

describe('average run length by simulation', () => {
  const runs = 20_000
  const seed = 20261125

  test.for([
    { shift: 0, want: 370.4 },
    { shift: 1, want: 43.89 },
    { shift: 2, want: 6.3 },
  ])('one value beyond three, shift $shift: $want (closed form)', ({ shift, want }) => {
    const { mean } = runLength({ rules: ruleSets.one, shift, runs, seed })
    expect(Math.abs(mean / want - 1)).toBeLessThan(0.02)
  })

  test('all four Western Electric rules, in control: 91.75 (Champ & Woodall 1987, from memory)', () => {
    const { mean } = runLength({ rules: ruleSets.westernElectric, shift: 0, runs, seed })
    expect(Math.abs(mean / 91.75 - 1)).toBeLessThan(0.02)
  })

  // Lucas & Saccucci 1990, Technometrics 32:1, table 3, from memory.
  test.for([
    { weight: 0.2, width: 2.962, shift: 1, want: 10.5 },
    { weight: 0.1, width: 2.814, shift: 1, want: 10.3 },
    { weight: 0.2, width: 2.962, shift: 0.5, want: 41.8 },
  ])('weighted mean $weight, $width, shift $shift: $want', ({ weight, width, shift, want }) => {
    const { mean } = runLength({ rules: [], ewma: { weight, width }, shift, runs, seed })
    expect(Math.abs(mean / want - 1)).toBeLessThan(0.02)
  })

  test('weighted mean in control: 500', () => {
    const { mean } = runLength({ rules: [], ewma: { weight: 0.2, width: 2.962 }, shift: 0, runs, seed })
    expect(Math.abs(mean / 500 - 1)).toBeLessThan(0.025)
  })

  test('limits from ten values alarm far more often in half of the labs', () => {
    const known = runLength({ rules: ruleSets.one, shift: 0, runs: 4000, seed })
    const ten = runLength({ rules: ruleSets.one, shift: 0, baseline: 10, runs: 4000, seed })
    expect(ten.median).toBeLessThan(0.6 * known.median)
  })
})
