import { expect, test } from 'vitest'
import { type CoverageKindName, coverageKind } from '../../src/bench/coverageKinds.ts'

// Small draws: a plain fault shows, a finer one needs `kufe coverage --of …`. The seed was not used for the tables.
test.for<{ of: CoverageKindName; draws: number }>([
  { of: 'stick-slip', draws: 60 },
  { of: 'wear', draws: 30 },
  { of: 'turn-map', draws: 10 },
  { of: 'master', draws: 4 },
])('a small study of $of is repeatable and not far from 95 %', { timeout: 60_000 }, ({ of, draws }) => {
  const { cover, groups } = coverageKind(of)
  const marks = Array.from({ length: draws }, (_, index) => cover(20261125, index)).flat()
  expect(cover(20261125, 1)).toEqual(cover(20261125, 1))
  expect([...new Set(marks.map(({ group }) => group))].every((group) => groups.includes(group))).toBe(true)
  const given = marks.filter(({ inside }) => inside !== null)
  const share = given.filter(({ inside }) => inside).length / given.length
  expect(given.length).toBeGreaterThan(draws / 2)
  // Five binomial standard errors of 95 %.
  expect(Math.abs(share - 0.95)).toBeLessThan(5 * Math.sqrt((0.95 * 0.05) / given.length))
})
