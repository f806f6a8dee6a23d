import { expect } from 'vitest'

/** Relative agreement; what is wanted as zero must be zero. */
export const near = (seen: number, want: number, within: number): void =>
  expect(want === 0 ? Math.abs(seen) : Math.abs(seen / want - 1), `${seen} for ${want}`).toBeLessThanOrEqual(within)

/** Steel as in the handbooks' examples. */
export const steel = { elasticModulus: 210e9, poissonRatio: 0.3 }
/** Soda-lime glass. */
export const glass = { elasticModulus: 72e9, poissonRatio: 0.22 }
/** A silicone elastomer of 2 MPa. */
export const elastomer = { elasticModulus: 2e6, poissonRatio: 0.5 }
