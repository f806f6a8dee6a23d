import {
  findLiquid,
  findMaterial,
  type Liquid,
  type LiquidRecipe,
  type LiquidViscosity,
  type Material,
  namedLiquids,
  recipeNamed,
  withOwnMaterials,
} from '../../core/material/index.ts'
import type { OwnThings } from '../../core/plan/index.ts'
import { done, failed, type Kelvin, type Outcome } from '../../core/terms/index.ts'

/** All bodies and the names of all liquids, own ones first. */
export interface MaterialTable {
  readonly bodies: readonly (Material & { readonly own: boolean })[]
  readonly liquids: readonly { readonly name: string; readonly own: boolean }[]
}

/** The built-in table with own things over it. */
export function materialTable(own: OwnThings): Outcome<MaterialTable> {
  const table = withOwnMaterials(own.materials)
  if (!table.ok) return table
  const owned = new Set(own.materials.map(({ name }) => name))
  return done({
    bodies: table.value.map((body) => ({ ...body, own: owned.has(body.name) })),
    liquids: [
      ...own.liquids.map(({ name }) => ({ name, own: true })),
      ...namedLiquids.map(({ name }) => ({ name, own: false })),
    ],
  })
}

/** One body or liquid with all that is known of it. */
export type FoundThing =
  | { readonly kind: 'body'; readonly body: Material }
  | {
      readonly kind: 'liquid'
      readonly name: string
      readonly recipe: LiquidRecipe | undefined
      readonly pressureCoefficient: Liquid['pressureCoefficient']
      readonly limits: Pick<Liquid, 'temperature' | 'pressure' | 'shearRate' | 'seen'>
      /** At some temperatures within its table; for a thinning liquid at some rates. */
      readonly viscosities: readonly LiquidAt[]
    }

export interface LiquidAt {
  readonly temperature: Kelvin
  readonly shearRate: number | null
  readonly at: LiquidViscosity
}

/** Finds a body, else a liquid, by its name; `temperature` is the one at which a liquid is shown. */
export function foundThing(name: string, own: OwnThings, temperature?: Kelvin): Outcome<FoundThing> {
  const table = withOwnMaterials(own.materials)
  if (!table.ok) return table
  const body = findMaterial(name, table.value)
  if (body.ok) return done({ kind: 'body', body: body.value })
  if (body.problems.some(({ kind }) => kind === 'materialAmbiguous')) return body
  const liquid = findLiquid(name, own.liquids)
  if (!liquid.ok)
    return failed(
      ...(liquid.problems[0]?.kind === 'liquidUnknown' ? [unknown(name, body.problems[0])] : liquid.problems),
    )
  const viscosities = viscositiesOf(liquid.value, temperature)
  if (!viscosities.ok) return viscosities
  const { pressureCoefficient, temperature: warm, pressure, shearRate, seen } = liquid.value
  return done({
    kind: 'liquid',
    name: liquid.value.name,
    recipe: recipeNamed(name, own.liquids),
    pressureCoefficient,
    limits: { temperature: warm, pressure, shearRate, seen },
    viscosities: viscosities.value,
  })
}

/** Usual temperatures at which a liquid is shown, as many as lie in its table: 5, 20, 25, 35, 40, 60, 80, 100 °C. */
const usual: readonly Kelvin[] = [5, 20, 25, 35, 40, 60, 80, 100].map((celsius) => celsius + 273.15)

function viscositiesOf(liquid: Liquid, wanted: Kelvin | undefined): Outcome<readonly LiquidAt[]> {
  const { low, high } = liquid.temperature
  const inside = usual.filter((one) => one >= low && one <= high)
  const temperatures =
    wanted !== undefined ? [wanted] : inside.length > 0 && liquid.shearRate === null ? inside : [(low + high) / 2]
  const all: LiquidAt[] = []
  for (const temperature of temperatures) {
    for (const shearRate of ratesOf(liquid)) {
      const at = liquid.viscosity(temperature, shearRate === null ? {} : { shearRate })
      if (!at.ok) return at
      all.push({ temperature, shearRate, at: at.value })
    }
  }
  return done(all)
}

/** The measured rates with the whole decades between them. */
function ratesOf({ shearRate }: Liquid): readonly (number | null)[] {
  if (shearRate === null) return [null]
  const { low, high } = shearRate
  const first = Math.ceil(Math.log10(low * 1.001))
  const last = Math.floor(Math.log10(high / 1.001))
  const decades = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => 10 ** (first + i))
  return [low, ...decades, high]
}

const unknown = (name: string, body: { readonly mend: string }) => ({
  kind: 'materialUnknown',
  class: 'wrongUse' as const,
  place: { name },
  what: `Neither a body nor a liquid is called "${name}".`,
  mend: `${body.mend.replace(/(Otherwise a|A)dd it.*$/, '').trim()} "kufe material" lists all; "kufe material --starter body" begins a file of your own.`.trim(),
})
