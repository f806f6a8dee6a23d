import type { Pascal, Ratio } from '../../terms/index.ts'
import { type KnownValue, known } from '../knownValue.ts'
import type { Material } from './material.ts'

/** Modulus (Pa) and Poisson ratio of the usual case, as laws of contact take them. */
export const elasticNumbers = (material: Material): { elasticModulus: Pascal; poissonRatio: Ratio } => ({
  elasticModulus: material.elasticModulus.value,
  poissonRatio: material.poissonRatio.value,
})

/** Conductivity (W/(m·K)), density (kg/m³) and specific heat (J/(kg·K)) of the usual case; undefined where one is not known. */
export function heatNumbers({
  conductivity,
  density,
  heatCapacity,
}: Material): { conductivity: number; density: number; heatCapacity: number } | undefined {
  if (conductivity === undefined || density === undefined || heatCapacity === undefined) return undefined
  return { conductivity: conductivity.value, density: density.value, heatCapacity: heatCapacity.value }
}

/** Standard gravity, m/s², by which kgf/mm² become MPa. */
const standardGravity = 9.80665

/**
 * Hardness as a pressure, Pa: load over the area of the dent for HV, HK and HB (kgf/mm² by definition) and for Brinell in
 * N/mm². Undefined for scales of depth or rebound (HRC, HRR, HRM, Shore), which no factor turns into a pressure.
 */
export function indentationHardness({ hardness }: Material): KnownValue | undefined {
  for (const { scale, low, value, high, source, seen } of hardness) {
    const factor = pressurePerUnit[scale]
    if (factor !== undefined) return known([low, value, high], { source: `${scale}: ${source}`, seen }, factor)
  }
  return undefined
}

const pressurePerUnit: Partial<Record<string, number>> = {
  HV: standardGravity * 1e6,
  HK: standardGravity * 1e6,
  HB: standardGravity * 1e6,
  'Brinell N/mm²': 1e6,
}
