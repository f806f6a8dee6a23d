import type { KnownValue } from '../knownValue.ts'

/** What kind of body a material makes: decides which laws of strength and contact may be asked. */
export const materialFamilies = [
  'metal',
  'ceramic',
  'glass',
  'polymer',
  'elastomer',
  'natural',
  'coating',
  'other',
] as const

/** One of these. */
export type MaterialFamily = (typeof materialFamilies)[number]

/**
 * Scale of a hardness. `HV`, `HK` (kgf/mm²), `HB` (kgf/mm²), `HRC`, `HRR`, `HRM`, `Shore A`, `Shore D` as their standards have
 * them; `Brinell N/mm²` as EN 1534 has it for wood.
 */
export const hardnessScales = ['HV', 'HK', 'HB', 'HRC', 'HRR', 'HRM', 'Shore A', 'Shore D', 'Brinell N/mm²'] as const

/** One of these. */
export type HardnessScale = (typeof hardnessScales)[number]

/** A hardness number with its scale. */
export interface Hardness extends KnownValue {
  readonly scale: HardnessScale
}

/** Strength in Pa. `yield`: in tension. `flexural`: bending of what cracks. `tensile`: where it tears. `compressive`: where it gives way. */
export interface Strength extends KnownValue {
  readonly kind: 'yield' | 'flexural' | 'tensile' | 'compressive'
}

/** Usual arithmetic-mean roughness Ra of a finish, m. For orientation: ask for a measurement. */
export interface FinishRoughness extends KnownValue {
  readonly finish: string
}

/** What a body is made of, near 23 °C. */
export interface Material {
  readonly name: string
  /** Other names, German ones and designations. One name may stand for several materials; who asks for it is told. */
  readonly synonyms: readonly string[]
  readonly family: MaterialFamily
  /** Young's modulus, Pa. */
  readonly elasticModulus: KnownValue
  /** −1 to 0.5. */
  readonly poissonRatio: KnownValue
  /** kg/m³ */
  readonly density?: KnownValue
  readonly hardness: readonly Hardness[]
  readonly strength?: Strength
  /** Thermal conductivity, W/(m·K). */
  readonly conductivity?: KnownValue
  /** Specific heat, J/(kg·K). */
  readonly heatCapacity?: KnownValue
  readonly finishes: readonly FinishRoughness[]
  /** What to mind when the values are used. */
  readonly note?: string
}
