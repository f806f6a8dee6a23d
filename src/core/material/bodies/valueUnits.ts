import { type From, type KnownValue, known } from '../knownValue.ts'
import type { FinishRoughness, Hardness, HardnessScale, Strength } from './material.ts'

/** Lowest, usual and highest value. */
export type Three = readonly [low: number, value: number, high: number]

/** A modulus in GPa. */
export const gigapascal = (values: Three, from: From): KnownValue => known(values, from, 1e9)

/** A modulus in MPa. */
export const megapascal = (values: Three, from: From): KnownValue => known(values, from, 1e6)

/** A hardness on its scale. */
export const hardness = (scale: HardnessScale, values: Three, from: From): Hardness => ({
  scale,
  ...known(values, from),
})

/** A strength in MPa. */
export const strength = (kind: Strength['kind'], values: Three, from: From): Strength => ({
  kind,
  ...known(values, from, 1e6),
})

/** Roughness Ra of a finish in µm. */
export const finish = (name: string, values: Three, from: From): FinishRoughness => ({
  finish: name,
  ...known(values, from, 1e-6),
})
