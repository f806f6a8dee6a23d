import { done, failed, type Outcome, type Problem } from '../../terms/index.ts'
import type { KnownValue } from '../knownValue.ts'
import { materialProblem } from '../materialProblem.ts'
import { foldName } from '../nameLikeness.ts'
import type { Material } from './material.ts'
import { materialFaults } from './materialFaults.ts'
import { materials } from './materials.ts'

/** A user's own entry: a new material, or the properties in which theirs differs from one of the table. */
export type OwnMaterial = Partial<Omit<Material, 'name'>> & Pick<Material, 'name'>

/** A user's own value in SI; without a span it stands for itself alone. */
export const ownValue = (value: number, source: string, span = { low: value, high: value }): KnownValue => ({
  value,
  low: span.low,
  high: span.high,
  source,
  seen: 'own',
})

/**
 * The table with the user's own materials over it. One that bears the name of an entry overlays its properties; a new one
 * needs at least elastic modulus and Poisson ratio. Own names win: a synonym that an own entry uses is taken from all others.
 * All that is wrong with the own entries comes back at once.
 */
export function withOwnMaterials(
  own: readonly OwnMaterial[],
  table: readonly Material[] = materials,
): Outcome<readonly Material[]> {
  const problems: Problem[] = []
  const merged = own.flatMap((entry) => {
    const base = table.find(({ name }) => foldName(name) === foldName(entry.name))
    const { elasticModulus = base?.elasticModulus, poissonRatio = base?.poissonRatio } = entry
    if (elasticModulus === undefined || poissonRatio === undefined) {
      problems.push(incomplete(entry.name))
      return []
    }
    const whole = { ...defaults, ...base, ...given(entry), elasticModulus, poissonRatio }
    problems.push(...materialFaults(whole))
    return [whole]
  })
  if (problems.length > 0) return failed(...problems)
  const names = new Set(merged.map(({ name }) => foldName(name)))
  const claimed = new Set(own.flatMap(({ name, synonyms = [] }) => [name, ...synonyms].map(foldName)))
  const others = table
    .filter(({ name }) => !names.has(foldName(name)))
    .map((other) => ({ ...other, synonyms: other.synonyms.filter((synonym) => !claimed.has(foldName(synonym))) }))
  return done([...merged, ...others])
}

const defaults = { synonyms: [], family: 'other', hardness: [], finishes: [] } as const

/** Without the properties that stand there as undefined. */
const given = (entry: OwnMaterial): OwnMaterial => ({
  ...Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)),
  name: entry.name,
})

const incomplete = (name: string): Problem =>
  materialProblem('materialIncomplete', name, {
    what: `"${name}" is in no table and has no elastic modulus or no Poisson ratio.`,
    mend: 'Give both.',
  })
