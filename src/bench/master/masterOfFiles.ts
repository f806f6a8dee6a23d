import { basename } from 'node:path'
import { hertzMeanPressure, hertzRadius } from '../../core/contact/index.ts'
import { type MasterCurveFit, masterCurve } from '../../core/curve/index.ts'
import { type HerseyDefinition, herseyDefinitions } from '../../core/film/index.ts'
import { fixtureGeometry, normalLoad } from '../../core/fixture/index.ts'
import {
  done,
  failed,
  type Metre,
  type Newton,
  type Origin,
  type Outcome,
  type Outside,
  type Problem,
  type Remark,
  schemaVersion,
} from '../../core/terms/index.ts'
import { masterFigure, type PaletteName } from '../../figure/index.ts'
import { setupBeside } from '../lab/setupFiles.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { type ReduceFileArgs, reduceFile } from '../reduceFile.ts'
import { sphereOf } from '../wear/sphereOf.ts'
import { liquidViscosity } from './liquidViscosity.ts'
import { masterPoints } from './masterPoints.ts'
import { masterRemarks, masterSentences } from './masterWords.ts'

export interface MasterArgs extends Omit<ReduceFileArgs, 'file'> {
  readonly files: readonly string[]
  readonly axis: HerseyDefinition
  readonly shearGap: Metre | undefined
}

/** One liquid as it went into the master curve. */
export interface LiquidInMaster {
  readonly name: string
  readonly file: string
  readonly points: readonly { readonly hersey: number; readonly friction: number; readonly ownUncertainty: number }[]
  readonly viscosity: number
  readonly viscosityUncertainty: number
  readonly origin: Origin
}

/** Several records on one curve. */
export interface MasterOfFiles {
  readonly axis: HerseyDefinition
  readonly liquids: readonly LiquidInMaster[]
  readonly fit: MasterCurveFit
  /** Where viscosities and contacts come from. */
  readonly taken: readonly string[]
  readonly sentences: readonly string[]
  readonly remarks: readonly Remark[]
}

/** Reduces every record with its own setup (or the one named) and brings them onto one axis. All problems at once. */
export async function masterOfFiles(args: MasterArgs, outside: Outside): Promise<Outcome<MasterOfFiles>> {
  if (args.files.length < 2) return failed(tooFew)
  const problems: Problem[] = []
  const taken: string[] = []
  const read: (LiquidInMaster & { readonly freedom: readonly number[] })[] = []
  for (const file of args.files) {
    const setup = args.setup ?? setupBeside(file)
    const reduced = await reduceFile({ ...args, file, setup }, outside)
    const liquid = reduced.ok ? liquidOf(reduced.value, args, taken) : reduced
    if (liquid.ok) read.push(liquid.value)
    else problems.push(...liquid.problems)
  }
  if (problems.length > 0) return failed(...problems)
  const fit = masterCurve(
    read.map(({ freedom, ...liquid }) => ({
      ...liquid,
      points: liquid.points.map((point, i) => ({ ...point, degreesOfFreedom: freedom[i] })),
    })),
    { seed: args.options.seed ?? 1 },
  )
  if (fit === undefined) return failed(tooFewPoints)
  const liquids = read.map(({ freedom: _, ...liquid }) => liquid)
  return done({
    axis: args.axis,
    liquids,
    fit,
    taken,
    sentences: masterSentences(fit, args.axis),
    remarks: masterRemarks(fit),
  })
}

function liquidOf(
  reduced: ReducedRecord,
  { axis, shearGap }: MasterArgs,
  taken: string[],
): Outcome<LiquidInMaster & { readonly freedom: readonly number[] }> {
  const { setup, reduction, file } = reduced
  const warmths = reduction.points.flatMap(({ temperature }) => (temperature === null ? [] : [temperature]))
  const seen = warmths.length === 0 ? null : warmths.reduce((a, b) => a + b, 0) / warmths.length
  const known = liquidViscosity(setup.liquid, { temperature: seen ?? setup.run.temperature ?? null, shearGap, file })
  if (!known.ok) return known
  const per = perViscosity(reduced, axis, taken)
  if (per === undefined) return failed(noContact(file))
  taken.push(known.value.sentence)
  const points = masterPoints(reduction.points, (speed) => known.value.at(speed) * per)
  const speeds = reduction.points.filter(({ trusted }) => trusted).map(({ slidingSpeed }) => Math.abs(slidingSpeed))
  const logs = speeds.map((speed) => Math.log(known.value.at(speed)))
  return done({
    name: setup.liquid?.name ?? file,
    file: basename(file),
    points: points.map(({ hersey, friction, ownUncertainty }) => ({ hersey, friction, ownUncertainty })),
    freedom: points.map(({ degreesOfFreedom }) => degreesOfFreedom),
    viscosity: Math.exp(logs.reduce((a, b) => a + b, 0) / Math.max(1, logs.length)),
    viscosityUncertainty: known.value.uncertainty,
    origin: reduced.origin,
  })
}

/** Hersey number over ηv; undefined where the contact is not known. The width of a point contact is its elastic diameter. */
function perViscosity(
  { setup, reduction }: ReducedRecord,
  axis: HerseyDefinition,
  taken: string[],
): number | undefined {
  if (axis === 'viscositySpeed') return 1
  const geometry = fixtureGeometry(setup.fixture)
  const forces = reduction.points.map(({ axialForce }) => axialForce).filter((force) => force > 0)
  if (forces.length === 0) return undefined
  const load: Newton = normalLoad(geometry, forces.reduce((a, b) => a + b, 0) / forces.length)
  if (axis === 'perLoad') return 1 / load
  const contact = sphereOf(setup)
  if (contact.sphere === undefined) return undefined
  for (const sentence of contact.taken) if (!taken.includes(sentence)) taken.push(sentence)
  const { radius, effectiveModulus } = contact.sphere
  const pressure = hertzMeanPressure(load, radius, effectiveModulus)
  if (axis === 'perPressure') return 1 / pressure
  return 1 / (pressure * 2 * hertzRadius(load, radius, effectiveModulus))
}

const problem = (what: string, mend: string, file?: string): Problem => ({
  kind: 'masterImpossible',
  class: file === undefined ? 'wrongUse' : 'badInput',
  place: file === undefined ? {} : { file },
  what,
  mend,
})

const tooFew = problem('A master curve takes two records or more.', 'Name one record for each liquid.')
const tooFewPoints = problem(
  'A master curve takes three trusted points of each liquid or more.',
  'Look at each record with "kufe reduce".',
)
const noContact = (file: string): Problem =>
  problem('The pressure of the contact is not known.', 'Give the moduli of both bodies, or choose another axis.', file)

/** For machines; SI throughout. Fields: docs/verbs/master.md. */
export const masterText = (found: MasterOfFiles): string =>
  `${JSON.stringify({ schemaVersion, ...found, definition: herseyDefinitions[found.axis] }, null, 2)}\n`

/** The picture as SVG text. */
export const drawMaster = ({ axis, liquids, fit, sentences }: MasterOfFiles, palette: PaletteName): string =>
  masterFigure(
    {
      title: 'Master curve',
      caption: sentences[0],
      axis: herseyDefinitions[axis],
      liquids: liquids.map(({ name, points, viscosity }) => ({ name, viscosity, points })),
      curve: fit.curve,
      sentence: sentences.join(' '),
    },
    { palette },
  )
