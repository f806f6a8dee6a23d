import {
  findLiquid,
  findMaterial,
  flowFunction,
  heatNumbers,
  type LiquidRecipe,
  type Material,
  type NamedRecipe,
  type OwnMaterial,
  recipeNamed,
  withOwnMaterials,
} from '../material/index.ts'
import { printQuantity } from '../quantity/index.ts'
import {
  done,
  failed,
  type LiquidSpec,
  type Outcome,
  type Problem,
  type Setup,
  type SurfaceSpec,
} from '../terms/index.ts'
import type { BodyBears, BodyHeat, PlanQuestion, QuestionFlow } from './question.ts'
import { spokenLiquid } from './spokenLiquid.ts'

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
export function fillFromTables(question: PlanQuestion, own: OwnThings = nothingOwn): Outcome<FilledQuestion> {
  const table = withOwnMaterials(own.materials)
  if (!table.ok) return table
  const taken: string[] = []
  const upper = filledBody(question.pair.upper, { bears: question.bears.upper, table: table.value, taken })
  const lower = filledBody(question.pair.lower, { bears: question.bears.lower, table: table.value, taken })
  const liquid = filledLiquid(question, own.liquids, taken)
  if (!liquid.ok) return liquid
  return done({
    question: {
      ...question,
      ...liquid.value,
      pair: { upper: upper.surface, lower: lower.surface },
      bears: { upper: upper.bears, lower: lower.bears },
      ...heatOf(question, upper.heat, lower.heat),
    },
    taken,
  })
}

function heatOf({ heat }: PlanQuestion, upper?: BodyHeat, lower?: BodyHeat): Pick<PlanQuestion, 'heat'> {
  const known = { ...(upper === undefined ? {} : { upper }), ...(lower === undefined ? {} : { lower }), ...heat }
  return Object.keys(known).length === 0 ? {} : { heat: known }
}

/** Pair and liquid of a setup with gaps closed by their names, as `fillFromTables` does for a question. */
export function fillPair(
  { pair, liquid, run }: Pick<Setup, 'pair' | 'liquid' | 'run'>,
  own: OwnThings = nothingOwn,
): Outcome<Pick<Setup, 'pair' | 'liquid'> & { readonly taken: readonly string[] }> {
  const table = withOwnMaterials(own.materials)
  if (!table.ok) return table
  const taken: string[] = []
  const known = { bears: { yieldStrength: 0, flexuralStrength: 0 }, table: table.value, taken }
  const filled = filledLiquid({ liquid, run }, own.liquids, taken)
  if (!filled.ok) return filled
  return done({
    pair: { upper: filledBody(pair.upper, known).surface, lower: filledBody(pair.lower, known).surface },
    ...(liquid === undefined ? {} : { liquid: { ...curveOf(filled.value.flow), ...(filled.value.liquid ?? liquid) } }),
    taken,
  })
}

/** The flow curve of a thinning liquid as a setup holds it: its law at three rates a decade over what was measured. */
function curveOf(flow: QuestionFlow | undefined): Pick<LiquidSpec, 'byRate'> {
  if (flow === undefined) return {}
  const { low, high } = flow.shearRate
  const gaps = Math.max(1, Math.ceil(3 * Math.log10(high / low)))
  const viscosity = flowFunction(flow.law, flow.parameters)
  const rounded = (value: number): number => Number(value.toPrecision(6))
  return {
    byRate: Array.from({ length: gaps + 1 }, (_, i) => {
      const at = rounded(low * (high / low) ** (i / gaps))
      return { at, viscosity: rounded(viscosity(at)) }
    }),
  }
}

/** What people keep of their own beside the built-in tables. */
export interface OwnThings {
  readonly materials: readonly OwnMaterial[]
  readonly liquids: readonly NamedRecipe[]
}

const nothingOwn: OwnThings = { materials: [], liquids: [] }

interface FilledBody {
  readonly surface: SurfaceSpec
  readonly bears: BodyBears
  readonly heat?: BodyHeat
}

function filledBody(
  surface: SurfaceSpec,
  { bears, table, taken }: { readonly bears: BodyBears; readonly table: readonly Material[]; readonly taken: string[] },
): FilledBody {
  const found = findMaterial(surface.name, table)
  if (!found.ok) return { surface, bears }
  const { name, elasticModulus, poissonRatio, strength } = found.value
  const heat = heatNumbers(found.value)
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
    return { surface: { ...surface, ...elastic }, bears, heat }
  }
  const value = printQuantity(strength.value, 'pressure', { digits: 3 })
  taken.push(
    `${name}: ${strength.kind === 'yield' ? 'yield strength' : 'strength in bending'} ${value} (${strength.source}).`,
  )
  return { surface: { ...surface, ...elastic }, bears: { ...bears, [key]: strength.value }, heat }
}

function filledLiquid(
  { liquid, run, pressureViscosity }: Pick<PlanQuestion, 'liquid' | 'run' | 'pressureViscosity'>,
  kept: readonly NamedRecipe[],
  taken: string[],
): Outcome<Partial<PlanQuestion>> {
  if (liquid === undefined) return done({})
  const spoken = spokenLiquid(liquid, run.temperature)
  if (!spoken.ok) return spoken
  if (liquid.viscosity !== undefined && spoken.value?.recipe.kind !== 'flowCurve') return done({})
  const own = spoken.value === undefined ? kept : [spoken.value, ...kept]
  const found = findLiquid(liquid.name, own)
  if (!found.ok) return found.problems.some(({ kind }) => kind !== 'liquidUnknown') ? found : done({})
  if (run.temperature === undefined) return failed(temperatureMissing(liquid.name))
  const recipe = recipeNamed(liquid.name, own)
  const flow = recipe?.kind === 'flowCurve' ? recipe : undefined
  // A thinning liquid has many viscosities: where one must stand for it, it is that at the fastest rate measured.
  const conditions = flow === undefined ? {} : { shearRate: flow.shearRate.high }
  const at = found.value.viscosity(run.temperature, conditions)
  if (!at.ok) return failed(...at.problems.map((problem) => ({ ...problem, place: { name: 'run.temperature' } })))
  const { viscosity, viscosityUncertainty, source } = at.value
  const warm = printQuantity(run.temperature, 'temperature', { digits: 4 })
  const fast = flow === undefined ? '' : ` and ${Number(flow.shearRate.high.toPrecision(3))} 1/s`
  taken.push(
    `${found.value.name}: viscosity ${printQuantity(viscosity, 'viscosity', { digits: 3 })} at ${warm}${fast} (${source}).`,
  )
  const coefficient = found.value.pressureCoefficient
  const thickening =
    pressureViscosity === undefined && coefficient !== null ? { pressureViscosity: coefficient.value } : {}
  const unsure = viscosityUncertainty === null ? {} : { viscosityUncertainty }
  return done({
    liquid: { viscosity, ...unsure, ...liquid },
    ...thickening,
    ...(flow === undefined ? {} : { flow: flowOf(flow) }),
  })
}

const flowOf = ({
  law,
  parameters,
  shearRate,
  source,
}: Extract<LiquidRecipe, { kind: 'flowCurve' }>): QuestionFlow => ({
  law,
  parameters,
  shearRate,
  source,
})

const temperatureMissing = (name: string): Problem => ({
  kind: 'questionImpossible',
  class: 'badInput',
  place: { name: 'run.temperature' },
  what: `The viscosity of ${name} depends on the temperature, and none is given.`,
  mend: 'Add "temperature: 25 °C" under "run:", or give the viscosity itself.',
})
