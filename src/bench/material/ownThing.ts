import { readFileSync } from 'node:fs'
import { basename, dirname, resolve } from 'node:path'
import {
  type FlowFit,
  type FlowPoint,
  fitFlowLaw,
  fitFlowLaws,
  type LiquidRecipe,
  liquidFrom,
  type NamedRecipe,
  type OwnMaterial,
  recipeFromFit,
} from '../../core/material/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { readFlowCurve, readOwnThing, type WrittenLiquid } from '../../io/ownThings/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** A flow curve behind a liquid: what was measured, every law that was tried, and the one that was taken, which comes first. */
export interface FlowBehind {
  readonly file: string
  readonly points: readonly FlowPoint[]
  readonly fits: readonly FlowFit[]
}

/** A body or a liquid of one's own: plain data, as the lab keeps it. */
export type OwnThing =
  | { readonly kind: 'material'; readonly material: OwnMaterial }
  | { readonly kind: 'liquid'; readonly liquid: NamedRecipe; readonly note?: string; readonly flow?: FlowBehind }

/** Reads a body or a liquid from its file, and the flow curve that it names, which is fitted. All problems at once. */
export function ownThing(file: string): Outcome<OwnThing> {
  const text = textOf(file)
  if (!text.ok) return text
  const read = readOwnThing(text.value, basename(file))
  if (!read.ok) return read
  if (read.value.kind === 'material') return done(read.value)
  const { liquid } = read.value
  const recipe = liquid.flowCurve === undefined ? done({ recipe: measured(liquid) }) : fitted(liquid, file)
  if (!recipe.ok) return recipe
  const usable = liquidFrom(recipe.value.recipe)
  if (!usable.ok)
    return failed(...usable.problems.map((one) => ({ ...one, place: { file: basename(file), ...one.place } })))
  const { name, synonyms, note } = liquid
  return done({
    kind: 'liquid',
    liquid: { name, synonyms, recipe: recipe.value.recipe },
    ...(note === undefined ? {} : { note }),
    ...('flow' in recipe.value ? { flow: recipe.value.flow } : {}),
  })
}

const measured = ({ name, shared, points }: WrittenLiquid): LiquidRecipe => ({
  kind: 'measured',
  name,
  ...shared,
  points,
})

function fitted(
  { name, shared, flowCurve }: WrittenLiquid,
  file: string,
): Outcome<{ readonly recipe: LiquidRecipe; readonly flow: FlowBehind }> {
  if (flowCurve === undefined) throw new RangeError('a liquid without a flow curve cannot be fitted')
  const path = resolve(dirname(file), flowCurve.file)
  const text = textOf(path)
  if (!text.ok) return text
  const curve = basename(path)
  const points = readFlowCurve(text.value, curve)
  if (!points.ok) return points
  const fits = flowCurve.law === undefined ? fitFlowLaws(points.value) : single(points.value, flowCurve.law)
  if (!fits.ok) return failed(...fits.problems.map((one) => ({ ...one, place: { file: curve, ...one.place } })))
  const usable = fits.value.filter(({ end }) => end.why === 'converged' || end.why === 'atBound')
  // A law at a bound is one that the curve does not need whole; a converged one goes before it unless it fits far worse.
  const best = usable.find(({ end }) => end.why === 'converged') ?? usable[0]
  if (best === undefined) return failed(notFitted(curve))
  const { temperature } = flowCurve
  const recipe = { ...recipeFromFit(best, { name, source: shared.source, temperature }), ...shared, beyond: true }
  return done({
    recipe,
    flow: { file: curve, points: points.value, fits: [best, ...usable.filter((fit) => fit !== best)] },
  })
}

function single(points: readonly FlowPoint[], law: FlowFit['law']): Outcome<readonly FlowFit[]> {
  const fit = fitFlowLaw(points, law)
  return fit.ok ? done([fit.value]) : fit
}

function textOf(file: string): Outcome<string> {
  try {
    return done(readFileSync(file, 'utf8'))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
}

const notFitted = (file: string): Problem => ({
  kind: 'flowCurveNotFitted',
  class: 'badInput',
  place: { file },
  what: 'No flow law could be fitted to this curve.',
  mend: 'Look for stray points, or name a simpler law: "law: power law".',
})
