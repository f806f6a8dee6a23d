import { done, failed, type Outcome } from '../../terms/index.ts'
import { materialProblem } from '../materialProblem.ts'
import { foldName, likeNames } from '../nameLikeness.ts'
import type { Material } from './material.ts'
import { materials } from './materials.ts'

/**
 * The material that is called so: its name first, then synonyms, in English, German or as a designation; capitals, umlauts,
 * spaces and hyphens do not matter. A name of several is answered with all of them, an unknown one with the names most like it.
 */
export function findMaterial(name: string, table: readonly Material[] = materials): Outcome<Material> {
  const folded = foldName(name)
  const called = table.find((material) => foldName(material.name) === folded)
  if (called !== undefined) return done(called)
  const meant = table.filter(({ synonyms }) => synonyms.some((synonym) => foldName(synonym) === folded))
  if (meant.length === 1) return done(meant[0])
  if (meant.length > 1) {
    const choices = meant.map((material) => `"${material.name}"`).join(', ')
    const what = `"${name}" may mean ${choices}.`
    return failed(materialProblem('materialAmbiguous', name, { what, mend: `Write one of ${choices}.` }))
  }
  const near = nearMaterials(name, table).map((near) => `"${near}"`)
  const what = `No material is called "${name}".`
  const mend = `${near.length > 0 ? `Did you mean ${near.join(' or ')}? Otherwise add` : 'Add'} it with its elastic modulus and Poisson ratio.`
  return failed(materialProblem('materialUnknown', name, { what, mend: capitalised(mend) }))
}

/** Up to three names or synonyms most like a written one, of different materials. */
function nearMaterials(name: string, table: readonly Material[]): readonly string[] {
  const owner = new Map(table.flatMap(({ name, synonyms }) => [name, ...synonyms].map((word) => [word, name] as const)))
  const found = new Map<string, string>()
  for (const word of likeNames(name, [...owner.keys()], 12)) {
    const of = owner.get(word) ?? word
    if (!found.has(of)) found.set(of, word)
  }
  return [...found.values()].slice(0, 3)
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
