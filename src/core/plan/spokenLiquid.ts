import { fitFlowLaws, type NamedRecipe, recipeFromFit } from '../material/index.ts'
import { done, failed, type Kelvin, type LiquidSpec, type Outcome } from '../terms/index.ts'

const source = 'as the question says'

/**
 * The liquid that a question or setup describes by measured viscosities: over temperatures, or over shear rates at the temperature of the
 * run, to which the best flow law is fitted. undefined where it does neither.
 */
export function spokenLiquid(
  { name, byRate, byTemperature }: LiquidSpec,
  temperature: Kelvin | undefined,
): Outcome<NamedRecipe | undefined> {
  if (byRate !== undefined && temperature !== undefined) {
    const fits = fitFlowLaws(byRate.map(({ viscosity, at }) => ({ shearRate: at, viscosity })))
    if (!fits.ok) return failed(...fits.problems.map((one) => ({ ...one, place: { name: 'liquid.byRate' } })))
    const best = fits.value.find(({ end }) => end.why === 'converged') ?? fits.value[0]
    const recipe = { ...recipeFromFit(best, { name, source, temperature }), beyond: true }
    return done({ name, synonyms: [], recipe })
  }
  if (byTemperature === undefined) return done(undefined)
  const points = byTemperature.map(({ viscosity, at }) => ({ temperature: at, viscosity }))
  points.sort((a, b) => a.temperature - b.temperature)
  return done({ name, synonyms: [], recipe: { kind: 'measured', name, source, points } })
}
