import { fixtureGeometry } from '../../core/fixture/index.ts'
import { type RecordWear, recordWear } from '../../core/reduce/questions/index.ts'
import {
  done,
  failed,
  type Origin,
  type Outcome,
  type Outside,
  type Problem,
  schemaVersion,
  type WornSpec,
} from '../../core/terms/index.ts'
import { type PaletteName, wearFigure } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile, type ReduceFileArgs } from '../reduceFile.ts'
import { sphereOf } from './sphereOf.ts'
import { type ReadWear, type TypedWear, typedWear } from './typedWear.ts'

/** A reduced record with its wear. */
export interface WearOfFile {
  readonly reduced: ReducedRecord
  readonly wear: RecordWear
  /** What the wear was worked out from: the setup's own, and what was typed before it. */
  readonly worn: WornSpec
  readonly grooves: ReadWear['grooves']
  /** What was taken from the tables of bodies. */
  readonly taken: readonly string[]
}

/** Reads and reduces a record, and works out what was worn and what that did. */
export async function wearOfFile(
  args: ReduceFileArgs & { readonly typed: TypedWear },
  outside: Outside,
): Promise<Outcome<WearOfFile>> {
  const typed = await typedWear(args.typed)
  if (!typed.ok) return typed
  return lookAtFile(args, outside, (channels, reduced) => {
    const { reduction } = reduced
    const worn = { ...reduced.setup.worn, ...typed.value.worn }
    const setup = { ...reduced.setup, worn }
    const { contacts } = fixtureGeometry(setup.fixture)
    if ((worn.scars ?? []).length > contacts) return failed(tooManyScars((worn.scars ?? []).length, contacts))
    const { sphere, taken } = sphereOf(setup)
    const wear = recordWear({ channels, setup, reduction }, sphere)
    return done({ reduced, wear, worn, grooves: typed.value.grooves, taken })
  })
}

const tooManyScars = (scars: number, contacts: number): Problem => ({
  kind: 'valuesDisagree',
  class: 'badInput',
  place: { name: 'worn.scars' },
  what: `There are ${scars} scars, but the fixture has ${contacts === 1 ? 'one body' : `${contacts} bodies`} in contact.`,
  mend: 'Name each scar once; two diameters of one scar are joined by x.',
})

/** For machines; SI throughout. Fields: docs/verbs/wear.md. */
export interface WearDocument extends RecordWear {
  readonly schemaVersion: typeof schemaVersion
  readonly record: { readonly file: string }
  readonly origin: Origin
  readonly worn: WornSpec
  readonly grooves: WearOfFile['grooves']
  readonly taken: readonly string[]
}

export const wearText = ({ reduced, wear, worn, grooves, taken }: WearOfFile): string => {
  const document: WearDocument = {
    schemaVersion,
    record: { file: reduced.file },
    origin: reduced.origin,
    worn,
    grooves,
    taken,
    ...wear,
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

/** The picture as SVG text. */
export const drawWear = ({ reduced, wear }: WearOfFile, palette: PaletteName): string =>
  wearFigure(wearFigureData(reduced, wear), { palette })

/** What the figure shows of a record. */
export const wearFigureData = (
  { setup, file }: Pick<ReducedRecord, 'setup' | 'file'>,
  { pressure, gap, moved, sentences }: RecordWear,
): Parameters<typeof wearFigure>[0] => ({
  title: `Wear: ${setup.run.sample ?? file}`,
  caption: sentences[0],
  note: setup.run.note,
  steps: pressure,
  elasticFor: moved.elasticFor,
  gap: gap?.course ?? [],
  sentence: sentences.join(' '),
})
