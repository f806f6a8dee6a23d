import type { Kelvin } from '../../terms/index.ts'
import type { FlowFit } from '../flow/fitFlowLaw.ts'
import type { LiquidRecipe } from './liquidRecipe.ts'

/** A fitted flow curve as a liquid that can be kept; its scatter becomes its relative uncertainty. Look at `fit.end` first. */
export const recipeFromFit = (
  fit: FlowFit,
  { name, source, temperature }: { readonly name: string; readonly source: string; readonly temperature: Kelvin },
): Extract<LiquidRecipe, { kind: 'flowCurve' }> => ({
  kind: 'flowCurve',
  name,
  source,
  temperature,
  law: fit.law,
  parameters: fit.parameters,
  shearRate: fit.shearRate,
  relativeUncertainty: fit.scatter ?? undefined,
})
