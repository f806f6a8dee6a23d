import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { materialsTables } from '../../scripts/materialsTable.ts'
import { materials } from '../../src/core/material/index.ts'

const page = readFileSync('docs/materials.md', 'utf8')

test('docs/materials.md shows the tables as they are (node scripts/materialsPage.ts writes them)', () => {
  const { bodies, coefficients } = materialsTables()
  expect(page).toContain(bodies)
  expect(page).toContain(coefficients)
})

test('the table holds at least 25 bodies, and each value of each has a source and a span', () => {
  expect(materials.length).toBeGreaterThanOrEqual(25)
  for (const {
    name,
    elasticModulus,
    poissonRatio,
    density,
    strength,
    conductivity,
    heatCapacity,
    hardness,
    finishes,
  } of materials) {
    for (const known of [
      elasticModulus,
      poissonRatio,
      density,
      strength,
      conductivity,
      heatCapacity,
      ...hardness,
      ...finishes,
    ]) {
      if (known === undefined) continue
      expect(known.source.length, name).toBeGreaterThan(3)
      expect(known.low <= known.value && known.value <= known.high, name).toBe(true)
    }
  }
})
