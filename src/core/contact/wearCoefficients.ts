import type { Ratio } from '../terms/index.ts'

/** Coefficient of wear of one material, dry and against hardened tool steel unless said. */
export interface WearCoefficient {
  readonly material: string
  readonly coefficient: Ratio
}

/**
 * Dry coefficients K of V = KFs/H, for orders of magnitude only: another surface, load or air shifts them tenfold. From an
 * encyclopedia's table after Archard 1953 and Archard & Hirst 1956 (Proc. R. Soc. A 236:397; the attribution from memory).
 */
export const wearCoefficients: readonly WearCoefficient[] = [
  { material: 'mild steel on itself', coefficient: 7e-3 },
  { material: 'α/β brass', coefficient: 6e-4 },
  { material: 'hard tool steel', coefficient: 1.3e-4 },
  { material: 'copper–beryllium', coefficient: 3.7e-5 },
  { material: 'PTFE', coefficient: 2.5e-5 },
  { material: 'ferritic stainless steel', coefficient: 1.7e-5 },
  { material: 'PMMA', coefficient: 7e-6 },
  { material: 'polyethylene', coefficient: 1.3e-7 },
]
