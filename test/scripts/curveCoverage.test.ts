import { expect, test } from 'vitest'
import { type CoverageCount, coverageTable, curveCoverage } from '../../scripts/curveCoverage.ts'

test('intervals of simulated curves hold the truth about as often as they say', () => {
  const counts = curveCoverage({ curves: 60, seed: 3, scatter: 0 })
  const share = ({ inside, given }: CoverageCount): number => inside / given
  const band = counts.get('band') ?? { given: 0, inside: 0, none: 0 }
  expect(band.given).toBe(6000)
  // From curve to curve the share covered varies with a standard deviation of 9 % (seen in 200 curves of other seeds).
  expect(share(band)).toBeGreaterThan(0.95 - 3 * (0.09 / Math.sqrt(60)))
  expect(share(band)).toBeLessThan(0.995)
  // Features of one curve go together; their share varies with 12 % from curve to curve (same 200).
  const features = [...counts].filter(([what]) => what !== 'band').map(([, count]) => count)
  const given = features.reduce((sum, count) => sum + count.given, 0)
  const inside = features.reduce((sum, count) => sum + count.inside, 0)
  expect(given).toBeGreaterThan(200)
  expect(inside / given).toBeGreaterThan(0.95 - 3 * (0.12 / Math.sqrt(60)))
  expect(inside / given).toBeLessThan(0.995)
})

test('the table names what it counts', () => {
  expect(coverageTable(new Map([['band', { given: 200, inside: 190, none: 3 }]]))).toContain(
    '| band | 95.0 % | 200 | 3 |',
  )
})
