import { failed, type Outcome } from '../../terms/index.ts'
import { materialProblem } from '../materialProblem.ts'
import { foldName, likeNames } from '../nameLikeness.ts'
import type { Liquid } from './liquid.ts'
import { liquidFrom } from './liquidFrom.ts'
import type { LiquidRecipe } from './liquidRecipe.ts'
import { mineralOilGrades } from './mineralOil.ts'

/** A recipe under the names by which people ask for it. */
export interface NamedRecipe {
  readonly name: string
  readonly synonyms: readonly string[]
  readonly recipe: LiquidRecipe
}

/** Liquids that need no number. Glycerol in water, silicone oils and ISO VG oils are named with theirs. */
export const namedLiquids: readonly NamedRecipe[] = [
  {
    name: 'water',
    synonyms: ['Wasser', 'H2O', 'deionised water', 'demineralisiertes Wasser'],
    recipe: { kind: 'water' },
  },
  {
    name: 'glycerol',
    synonyms: ['glycerine', 'glycerin', 'Glyzerin', 'propane-1,2,3-triol'],
    recipe: { kind: 'glycerolWater', massFraction: 1 },
  },
  {
    name: 'squalane',
    synonyms: ['Squalan', 'hexamethyltetracosane', 'perhydrosqualene'],
    recipe: { kind: 'squalane' },
  },
  ...mineralOilGrades.map((grade) => ({
    name: `ISO VG ${grade}`,
    synonyms: [`VG ${grade}`, `mineral oil VG ${grade}`, `Mineralöl VG ${grade}`],
    recipe: { kind: 'mineralOil', grade } as const,
  })),
  ...[10, 20, 50, 100, 350, 1000, 10_000, 100_000].map((grade) => ({
    name: `silicone oil ${grade} mm²/s`,
    synonyms: [`silicone oil ${grade}`, `Silikonöl ${grade}`, `PDMS oil ${grade}`],
    recipe: { kind: 'siliconeOil', grade: grade / 1e6 } as const,
  })),
]

/**
 * The liquid that is called so, the user's own first. Understands a share of mass with glycerol ("glycerol 60 %") and any
 * grade of silicone oil in mm²/s ("silicone oil 500"). An unknown name is answered with those most like it.
 */
export function findLiquid(name: string, own: readonly NamedRecipe[] = []): Outcome<Liquid> {
  const all = [...own, ...namedLiquids]
  const recipe = recipeNamed(name, own)
  if (recipe !== undefined) return liquidFrom(recipe)
  const near = likeNames(
    name,
    all.flatMap((liquid) => [liquid.name, ...liquid.synonyms]),
  ).map((word) => `"${word}"`)
  return failed(
    materialProblem('liquidUnknown', name, {
      what: `No liquid is called "${name}".`,
      mend:
        near.length > 0
          ? `Write ${near.join(' or ')}, or add it as a recipe.`
          : 'Add it as a recipe with measured viscosities.',
    }),
  )
}

/** The recipe of the liquid that is called so; undefined for an unknown name. */
export function recipeNamed(name: string, own: readonly NamedRecipe[] = []): LiquidRecipe | undefined {
  const folded = foldName(name)
  const found = [...own, ...namedLiquids].find((liquid) =>
    [liquid.name, ...liquid.synonyms].some((word) => foldName(word) === folded),
  )
  return found?.recipe ?? numberedRecipe(name)
}

const glycerolWords = /^(?:glycerol|glycerine?|glyzerin)\D*?(\d+(?:[.,]\d+)?)\s*(?:%|percent|prozent)/i
const siliconeWords = /^(?:silicone oil|silikonöl|siliconöl|pdms oil)\D*?(\d+(?:[.,]\d+)?)\s*(?:mm²\/s|mm2\/s|cst)?$/i

function numberedRecipe(name: string): LiquidRecipe | undefined {
  // A share of volume is another mixture: 50 % by volume are 56 % by mass.
  if (/v\/v|vol/i.test(name)) return undefined
  const glycerol = glycerolWords.exec(name.trim())
  if (glycerol !== null) return { kind: 'glycerolWater', massFraction: decimal(glycerol[1]) / 100 }
  const silicone = siliconeWords.exec(name.trim())
  return silicone === null ? undefined : { kind: 'siliconeOil', grade: decimal(silicone[1]) / 1e6 }
}

const decimal = (text: string): number => Number(text.replace(',', '.'))
