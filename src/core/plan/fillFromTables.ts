import { findLiquid, findMaterial } from '../material/index.ts'
import { printQuantity } from '../quantity/index.ts'
import { done, failed, type Outcome, type Problem, type SurfaceSpec } from '../terms/index.ts'
import type { BodyBears, PlanQuestion } from './question.ts'

/** A question with gaps closed from the tables of bodies and liquids, and what was taken from there. */
export interface FilledQuestion {
  readonly question: PlanQuestion
  /** One sentence for each value that was taken over, with its source. */
  readonly taken: readonly string[]
}

/**
 * Closes gaps of a question by the names of its bodies and its liquid; what was given is never changed. A name that no table
 * knows leaves its gap, and the plan says what it does not judge. A liquid that is known but not at this temperature is a problem.
 */
export function fillFromTables(question: PlanQuestion): Outcome<FilledQuestion> {
  const taken: string[] = []
  const upper = filledBody(question.pair.upper, question.bears.upper, taken)
  const lower = filledBody(question.pair.lower, question.bears.lower, taken)
  const liquid = filledLiquid(question, taken)
  if (!liquid.ok) return liquid
  return done({
    question: {
      ...question,
      ...liquid.value,
      pair: { upper: upper.surface, lower: lower.surface },
      bears: { upper: upper.bears, lower: lower.bears },
    },
    taken,
  })
}

function filledBody(
  surface: SurfaceSpec,
  bears: BodyBears,
  taken: string[],
): { surface: SurfaceSpec; bears: BodyBears } {
  const found = findMaterial(surface.name)
  if (!found.ok) return { surface, bears }
  const { name, elasticModulus, poissonRatio, strength } = found.value
  const elastic =
    surface.elasticModulus === undefined
      ? { elasticModulus: elasticModulus.value, poissonRatio: surface.poissonRatio ?? poissonRatio.value }
      : {}
  if (surface.elasticModulus === undefined) {
    const ends = [elasticModulus.low, elasticModulus.value, elasticModulus.high].map((one) =>
      printQuantity(one, 'pressure', { digits: 3 }),
    )
    taken.push(`${name}: modulus ${ends[1]} (${ends[0]} to ${ends[2]}; ${elasticModulus.source}).`)
  }
  const key =
    strength?.kind === 'yield' ? 'yieldStrength' : strength?.kind === 'flexural' ? 'flexuralStrength' : undefined
  if (strength === undefined || key === undefined || bears[key] !== undefined) {
    return { surface: { ...surface, ...elastic }, bears }
  }
  const value = printQuantity(strength.value, 'pressure', { digits: 3 })
  taken.push(
    `${name}: ${strength.kind === 'yield' ? 'yield strength' : 'strength in bending'} ${value} (${strength.source}).`,
  )
  return { surface: { ...surface, ...elastic }, bears: { ...bears, [key]: strength.value } }
}

function filledLiquid(
  { liquid, run, pressureViscosity }: PlanQuestion,
  taken: string[],
): Outcome<Partial<PlanQuestion>> {
  if (liquid === undefined || liquid.viscosity !== undefined) return done({})
  const found = findLiquid(liquid.name)
  if (!found.ok) return done({})
  if (run.temperature === undefined) return failed(temperatureMissing(liquid.name))
  const at = found.value.viscosity(run.temperature)
  if (!at.ok) return failed(...at.problems.map((problem) => ({ ...problem, place: { name: 'run.temperature' } })))
  const { viscosity, viscosityUncertainty, source } = at.value
  const warm = printQuantity(run.temperature, 'temperature', { digits: 4 })
  taken.push(
    `${found.value.name}: viscosity ${printQuantity(viscosity, 'viscosity', { digits: 3 })} at ${warm} (${source}).`,
  )
  const coefficient = found.value.pressureCoefficient
  const thickening =
    pressureViscosity === undefined && coefficient !== null ? { pressureViscosity: coefficient.value } : {}
  const unsure = viscosityUncertainty === null ? {} : { viscosityUncertainty }
  return done({ liquid: { ...liquid, viscosity, ...unsure }, ...thickening })
}

const temperatureMissing = (name: string): Problem => ({
  kind: 'questionImpossible',
  class: 'badInput',
  place: { name: 'run.temperature' },
  what: `The viscosity of ${name} depends on the temperature, and none is given.`,
  mend: 'Add "temperature: 25 °C" under "run:", or give the viscosity itself.',
})
