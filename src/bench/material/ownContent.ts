import { type LiquidRecipe, liquidFrom, type OwnMaterial, withOwnMaterials } from '../../core/material/index.ts'
import type { OwnThing } from './ownThing.ts'

/**
 * A body or a liquid as a paper of the lab holds it: a material as the core has it, a liquid as its recipe, with other names, note
 * and flow curve beside it.
 */
export function ownContent(thing: OwnThing): unknown {
  if (thing.kind === 'material') return thing.material
  const { liquid, note, flow } = thing
  return {
    ...liquid.recipe,
    name: liquid.name,
    synonyms: liquid.synonyms,
    ...(note === undefined ? {} : { note }),
    ...(flow === undefined ? {} : { flow }),
  }
}

/** The same backwards; undefined for what cannot be used, such as a paper in another form. */
export function ownOfContent(kind: string, content: unknown): OwnThing | undefined {
  if (typeof content !== 'object' || content === null || !('name' in content)) return undefined
  if (typeof content.name !== 'string') return undefined
  try {
    if (kind === 'material') {
      const material = content as OwnMaterial // looked through by `withOwnMaterials`
      return withOwnMaterials([material]).ok ? { kind, material } : undefined
    }
    if (kind !== 'liquid' || !('kind' in content)) return undefined
    const recipe = content as unknown as LiquidRecipe // looked through by `liquidFrom`
    if (!liquidFrom(recipe).ok) return undefined
    const synonyms = 'synonyms' in content && Array.isArray(content.synonyms) ? content.synonyms.map(String) : []
    return { kind, liquid: { name: content.name, synonyms, recipe } }
  } catch {
    return undefined // a field that should be a list or a number is none
  }
}
