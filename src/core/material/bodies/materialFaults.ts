import type { Problem } from '../../terms/index.ts'
import type { KnownValue } from '../knownValue.ts'
import { materialProblem } from '../materialProblem.ts'
import { inUnit } from '../refuse.ts'
import { within } from '../span.ts'
import type { Material } from './material.ts'

interface Limits {
  readonly low: number
  readonly high: number
  readonly unit: string
}

/** What a value may be at all; far wider than any material. */
const limits = {
  elasticModulus: { low: 1, high: 2e12, unit: 'Pa' },
  poissonRatio: { low: -0.99, high: 0.5, unit: '' },
  density: { low: 5, high: 25_000, unit: 'kg/m³' },
  hardness: { low: 0, high: 20_000, unit: '' },
  strength: { low: 1, high: 1e11, unit: 'Pa' },
  conductivity: { low: 1e-4, high: 5000, unit: 'W/(m·K)' },
  heatCapacity: { low: 1, high: 20_000, unit: 'J/(kg·K)' },
  roughness: { low: 0, high: 1e-3, unit: 'm' },
} as const

/** All values of a material that no material has; NaN is one of them. */
export function materialFaults(material: Material): readonly Problem[] {
  const { name, elasticModulus, poissonRatio, density, strength, conductivity, heatCapacity } = material
  const values: readonly (readonly [called: string, known: KnownValue | undefined, limits: Limits])[] = [
    ['elastic modulus', elasticModulus, limits.elasticModulus],
    ['Poisson ratio', poissonRatio, limits.poissonRatio],
    ['density', density, limits.density],
    ['strength', strength, limits.strength],
    ['thermal conductivity', conductivity, limits.conductivity],
    ['specific heat', heatCapacity, limits.heatCapacity],
    ...material.hardness.map((hardness) => [`hardness ${hardness.scale}`, hardness, limits.hardness] as const),
    ...material.finishes.map((finish) => [`roughness "${finish.finish}"`, finish, limits.roughness] as const),
  ]
  return values.flatMap(([called, known, limits]) => {
    if (known === undefined) return []
    const { low, value, high } = known
    const rises = low <= value && value <= high
    if (rises && within(low, limits) && within(high, limits)) return []
    const seen = low === value && value === high ? `${value}` : `${value} between ${low} and ${high}`
    const what = `The ${called} of "${name}" is ${inUnit(seen, limits.unit)}.`
    const range = inUnit(`${limits.low} to ${limits.high}`, limits.unit)
    const mend = `Give a value of ${range}, between its own low and high end.`
    return materialProblem('materialValueImpossible', name, { what, mend })
  })
}
