import { expect, test } from 'vitest'
import { fuzz, fuzzCase, showReport } from '../../../scripts/fuzzTables.ts'
import { mutations } from '../../../scripts/mutateBytes.ts'
import { seedTables } from '../../../scripts/seedTables.ts'

test('500 damaged files: each ends soon, in a record or in problems that help', async () => {
  const report = await fuzz({ count: 500, seed: 20_261_125 })
  expect(report.faults).toEqual([])
  expect(report.cases).toBe(500)
  // The mutations hurt, and not everything.
  expect(report.read).toBeGreaterThan(50)
  expect(Object.keys(report.refused).length).toBeGreaterThan(6)
  expect(showReport(report)).toContain('500 damaged files')
}, 120_000)

test('the same number and seed make the same bytes', () => {
  const seeds = seedTables()
  for (const number of [0, 7, 499]) {
    expect(fuzzCase(seeds, number, 1)).toEqual(fuzzCase(seeds, number, 1))
    expect(fuzzCase(seeds, number, 1)).not.toEqual(fuzzCase(seeds, number, 2))
  }
})

test('every mutation bears an empty file', () => {
  for (const mutation of Object.values(mutations))
    expect(mutation(new Uint8Array(0), (below) => Math.max(0, below - 1)).length).toBeGreaterThanOrEqual(0)
})
