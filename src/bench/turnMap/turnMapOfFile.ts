import {
  type RecordTurnDifference,
  type RecordTurnMap,
  recordTurnDifference,
  recordTurnMap,
  type TurnQuantity,
} from '../../core/reduce/index.ts'
import {
  done,
  failed,
  type Origin,
  type Outcome,
  type Outside,
  type Problem,
  schemaVersion,
} from '../../core/terms/index.ts'
import { type PaletteName, turnChangeFigure, turnMapFigure } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile, type ReduceFileArgs } from '../reduceFile.ts'

export interface TurnMapArgs extends ReduceFileArgs {
  readonly quantity: TurnQuantity
  /** As fine as the record is long where nothing is said. */
  readonly columns?: number
  readonly rows?: number
  /** Places around the turn of the comparison. */
  readonly places?: number
}

/** A reduced record folded by turns. */
export interface TurnMapOfFile {
  readonly reduced: ReducedRecord
  readonly map: RecordTurnMap
  readonly change: RecordTurnDifference
}

/** Reads and reduces a record, folds it by turns, and compares late turns with early ones. */
export function turnMapOfFile(args: TurnMapArgs, outside: Outside): Promise<Outcome<TurnMapOfFile>> {
  const { quantity, columns, rows, places } = args
  return lookAtFile(args, outside, (channels, reduced) => {
    if (quantity === 'gap' && !channels.names.includes('gap')) return failed(noGap)
    const record = { channels, setup: reduced.setup, reduction: reduced.reduction }
    const fineness = {
      ...(columns === undefined ? {} : { columns }),
      ...(rows === undefined ? {} : { rows }),
    }
    return done({
      reduced,
      map: recordTurnMap(record, quantity, fineness),
      change: recordTurnDifference(record, quantity, places === undefined ? {} : { columns: places }),
    })
  })
}

const noGap: Problem = {
  kind: 'channelMissing',
  class: 'badInput',
  place: { name: '--quantity' },
  what: 'The record has no gap.',
  mend: 'Ask for friction, friction-swing or axial-force.',
}

/** For machines; SI throughout, holes null. Fields: docs/verbs/turn-map.md. */
export interface TurnMapDocument {
  readonly schemaVersion: typeof schemaVersion
  readonly record: { readonly file: string }
  readonly origin: Origin
  readonly quantity: TurnQuantity
  readonly map: Omit<RecordTurnMap, 'mean'> & { readonly mean: readonly number[] }
  readonly change: Record<string, unknown> | null
  readonly sentence: string
  readonly remarks: RecordTurnDifference['remarks']
}

export function turnMapText({ reduced, map, change }: TurnMapOfFile): string {
  const { difference } = change
  const document: TurnMapDocument = {
    schemaVersion,
    record: { file: reduced.file },
    origin: reduced.origin,
    quantity: change.quantity,
    map: { ...map, mean: [...map.mean] },
    change:
      difference === null
        ? null
        : {
            ...difference,
            ...Object.fromEntries(
              (['early', 'late', 'local', 'low', 'high'] as const).map((name) => [name, [...difference[name]]]),
            ),
          },
    sentence: change.sentence,
    remarks: change.remarks,
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

/** In pixels, where nothing is said. */
const usualWidth = 880

/** The map as SVG text; with `difference`, each cell less the mean of its place over the early turns. */
export function drawTurnMap(
  { reduced, map, change }: TurnMapOfFile,
  {
    palette,
    difference,
    width = usualWidth,
  }: { readonly palette: PaletteName; readonly difference: boolean; readonly width?: number },
): string {
  const { setup, file } = reduced
  const shown = difference ? changedMap(map, change) : map
  return turnMapFigure(
    {
      title: `${difference ? 'Change from the early turns' : 'Over the turn'}: ${setup.run.sample ?? file}`,
      caption: difference ? 'each cell less the mean of its place over the early turns' : undefined,
      note: setup.run.note,
      map: shown,
      quantity: change.quantity,
      steps: map.steps,
      diverging: difference,
    },
    { palette, width },
  )
}

/** Cells less their place's mean over the first third of the rows; colours even about zero. */
function changedMap(map: RecordTurnMap, { difference }: RecordTurnDifference): RecordTurnMap {
  const { columns, rows, mean, turns } = map
  const until = difference?.earlyTurns.to ?? turns[Math.ceil(rows / 3)] ?? Number.POSITIVE_INFINITY
  const early = turns.slice(0, -1).filter((turn) => turn < until).length
  const base = Float64Array.from({ length: columns }, (_, c) => {
    const known = Array.from({ length: early }, (_row, row) => mean[row * columns + c]).filter((v) => !Number.isNaN(v))
    return known.length === 0 ? Number.NaN : known.reduce((a, b) => a + b, 0) / known.length
  })
  const changed = mean.map((value, cell) => value - base[cell % columns])
  const sizes = changed
    .filter((value) => !Number.isNaN(value))
    .map(Math.abs)
    .sort()
  const most = sizes.length === 0 ? 0 : sizes[Math.floor(0.99 * (sizes.length - 1))]
  return { ...map, mean: changed, range: sizes.length === 0 ? null : [-most, most] }
}

const words = {
  friction: 'friction coefficient µ (1)',
  frictionSwing: 'friction against its step (%)',
  axialForce: 'axial force (N)',
  gap: 'gap (µm)',
} as const
const factors = { friction: 1, frictionSwing: 100, axialForce: 1, gap: 1e6 } as const

/** Early and late profiles with their difference, as SVG text. */
export function drawTurnChange({ reduced, change }: TurnMapOfFile, palette: PaletteName, width = usualWidth): string {
  const { setup, file } = reduced
  const { difference, quantity, sentence } = change
  const by = (values: ArrayLike<number>): number[] => Array.from(values, (value) => value * factors[quantity])
  const spot = difference?.spot ?? null
  return turnChangeFigure(
    {
      title: `Late turns against early ones: ${setup.run.sample ?? file}`,
      note: setup.run.note,
      angles: difference?.angles ?? [],
      early: by(difference?.early ?? []),
      late: by(difference?.late ?? []),
      local: by(difference?.local ?? []),
      low: by(difference?.low ?? []),
      high: by(difference?.high ?? []),
      quantity: words[quantity],
      spot:
        spot === null
          ? null
          : {
              ...spot,
              course: spot.course.map(({ turn, change: one }) => ({ turn, change: one * factors[quantity] })),
            },
      sentence,
    },
    { palette, width },
  )
}
