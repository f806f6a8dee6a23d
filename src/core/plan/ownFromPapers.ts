import {
  type LiquidRecipe,
  liquidFrom,
  type NamedRecipe,
  type OwnMaterial,
  withOwnMaterials,
} from '../material/index.ts'
import type { OwnThings } from './fillFromTables.ts'

/** A paper as far as this needs to know it. */
export interface OwnPaper {
  readonly kind: string
  readonly content: unknown
}

/**
 * Own bodies and liquids out of the papers of a lab: a `material` holds a material as the core has it, a `liquid` its recipe, with
 * `synonyms` beside it. What cannot be used, and papers of other kinds, are passed over.
 */
export const ownFromPapers = (papers: readonly OwnPaper[]): OwnThings => ({
  materials: papers.flatMap((paper) => materialIn(paper) ?? []),
  liquids: papers.flatMap((paper) => liquidIn(paper) ?? []),
})

function materialIn({ kind, content }: OwnPaper): OwnMaterial | undefined {
  if (kind !== 'material' || !isNamed(content)) return undefined
  const material: OwnMaterial = content
  return usable(() => withOwnMaterials([material]).ok) ? material : undefined
}

function liquidIn({ kind, content }: OwnPaper): NamedRecipe | undefined {
  if (kind !== 'liquid' || !isNamed(content) || !('kind' in content)) return undefined
  const recipe = content as unknown as LiquidRecipe // looked through by `liquidFrom`
  if (!usable(() => liquidFrom(recipe).ok)) return undefined
  const synonyms = 'synonyms' in content && Array.isArray(content.synonyms) ? content.synonyms.map(String) : []
  return { name: content.name, synonyms, recipe }
}

const isNamed = (content: unknown): content is { readonly name: string } =>
  typeof content === 'object' && content !== null && 'name' in content && typeof content.name === 'string'

/** A field that should be a list or a number may be none, which laws do not look for. */
function usable(check: () => boolean): boolean {
  try {
    return check()
  } catch {
    return false
  }
}
