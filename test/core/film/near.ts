import { expect } from 'vitest'
import { effectiveModulus } from '../../../src/core/contact/index.ts'

/** Relative agreement; what is wanted as zero must be zero. */
export const near = (seen: number | null, want: number, within: number): void =>
  expect(
    want === 0 ? Math.abs(seen ?? Number.NaN) : Math.abs((seen ?? Number.NaN) / want - 1),
    `${seen} for ${want}`,
  ).toBeLessThanOrEqual(within)

const steel = { elasticModulus: 210e9, poissonRatio: 0.3 }
const radius = 0.00635

/** 12.7 mm steel balls on other bodies. */
export const pairs = {
  onSteel: { radius, effectiveModulus: effectiveModulus(steel, steel) },
  onGlass: { radius, effectiveModulus: effectiveModulus(steel, { elasticModulus: 72e9, poissonRatio: 0.22 }) },
  onElastomer: { radius, effectiveModulus: effectiveModulus(steel, { elasticModulus: 2e6, poissonRatio: 0.5 }) },
} as const

/** Contacts with films computed independently. */
export const contacts = {
  hardSteel: { ...pairs.onSteel, load: 20, viscosity: 0.0275, entrainmentSpeed: 0.1, pressureViscosity: 22e-9 },
  hardGlass: { ...pairs.onGlass, load: 10, viscosity: 0.1, entrainmentSpeed: 0.05, pressureViscosity: 20e-9 },
  softWater: {
    ...pairs.onElastomer,
    load: 1,
    viscosity: 0.89e-3,
    entrainmentSpeed: 0.1,
    pressureViscosity: 0.5e-9,
  },
  softSyrup: { ...pairs.onElastomer, load: 1, viscosity: 1, entrainmentSpeed: 0.01, pressureViscosity: 0.5e-9 },
  rigid: { ...pairs.onSteel, load: 0.5, viscosity: 1, entrainmentSpeed: 0.1, pressureViscosity: 1e-9 },
} as const
