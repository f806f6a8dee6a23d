import { done, failed, type Outcome } from '../../terms/index.ts'
import { type KnownValue, known } from '../knownValue.ts'
import { flowCurveLiquid } from './flowCurveLiquid.ts'
import { glycerolLiquid } from './glycerolLiquid.ts'
import type { Liquid } from './liquid.ts'
import type { LiquidRecipe } from './liquidRecipe.ts'
import { measuredLiquid } from './measuredLiquid.ts'
import { mineralOil } from './mineralOil.ts'
import { oilLiquid } from './oilLiquid.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'
import { recipeProblems } from './recipeProblems.ts'
import { siliconeOil } from './siliconeOil.ts'
import { squalane } from './squalane.ts'
import { waterLiquid } from './waterLiquid.ts'

/** The liquid that a recipe describes, or all that is impossible about the recipe. */
export function liquidFrom(recipe: LiquidRecipe): Outcome<Liquid> {
  const problems = recipeProblems(recipe)
  return problems.length > 0 ? failed(...problems) : done(made(recipe))
}

function made(recipe: LiquidRecipe): Liquid {
  switch (recipe.kind) {
    case 'water':
      return waterLiquid
    case 'squalane':
      return squalane
    case 'glycerolWater':
      return glycerolLiquid(recipe.massFraction)
    case 'siliconeOil':
      return siliconeOil(recipe.grade)
    case 'mineralOil': {
      const oil = mineralOil(recipe.grade)
      if (oil === undefined) throw new RangeError(`no usual mineral oil of grade ${recipe.grade}`)
      return oil
    }
    case 'oil':
      return ownOil(recipe)
    case 'measured':
      return measuredLiquid({ ...recipe, density: recipe.density ?? null, pressureCoefficient: coefficientOf(recipe) })
    case 'flowCurve':
      return flowCurveLiquid({
        ...recipe,
        beyond: recipe.beyond ?? false,
        relativeUncertainty: recipe.relativeUncertainty ?? null,
        density: recipe.density ?? null,
        pressureCoefficient: coefficientOf(recipe),
      })
  }
}

function ownOil(recipe: Extract<LiquidRecipe, { kind: 'oil' }>): Liquid {
  const { points, relativeUncertainty, density, densityTemperature, expansion = 7e-4 } = recipe
  const [cold, hot] = points.map(({ temperature }) => temperature).sort((a, b) => a - b)
  if (density === undefined) throw new RangeError('an oil needs its density')
  return oilLiquid({
    name: recipe.name,
    seen: 'own',
    source: recipe.source,
    points,
    uncertainties: relativeUncertainty === undefined ? null : [relativeUncertainty, relativeUncertainty],
    density: { density, temperature: densityTemperature ?? cold, expansion },
    temperature: recipe.temperature ?? { low: cold - 40, high: hot + 20 },
    pressureCoefficient: coefficientOf(recipe),
  })
}

function coefficientOf(recipe: Extract<LiquidRecipe, { source: string }>): KnownValue | null {
  const { pressureCoefficient: own, family } = recipe
  if (own !== undefined) return known([own, own, own], { source: recipe.source, seen: 'own' })
  return family === undefined ? null : pressureCoefficients[family]
}
