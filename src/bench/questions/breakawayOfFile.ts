import { type BreakawayOptions, breakawayOf } from '../../core/reduce/questions/index.ts'
import { type Breakaway, done, type Outcome, type Outside } from '../../core/terms/index.ts'
import { breakawayFigure, type PaletteName } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile, type ReduceFileArgs } from '../reduceFile.ts'
import { headOf, textOf } from './answered.ts'

/** A record with its starts from rest. */
export interface BreakawayOfFile {
  readonly reduced: ReducedRecord
  readonly breakaway: Breakaway
}

/** Reads a record and looks for its starts from rest. */
export const breakawayOfFile = (
  args: ReduceFileArgs & { readonly breakaway: BreakawayOptions },
  outside: Outside,
): Promise<Outcome<BreakawayOfFile>> =>
  lookAtFile(args, outside, (channels, reduced) => {
    const breakaway = breakawayOf(channels, reduced.setup, args.breakaway)
    return breakaway.ok ? done({ reduced, breakaway: breakaway.value }) : breakaway
  })

/** For machines; SI throughout. Fields: docs/verbs/breakaway.md. */
export const breakawayText = ({ reduced, breakaway }: BreakawayOfFile): string =>
  textOf({ ...headOf(reduced), ...breakaway })

/** The picture as SVG text. */
export const drawBreakaway = ({ reduced, breakaway }: BreakawayOfFile, palette: PaletteName): string =>
  breakawayFigure(
    {
      title: `Breakaway: ${reduced.setup.run.sample ?? reduced.file}`,
      caption: breakaway.ageing?.sentence ?? breakaway.ageingMissing ?? undefined,
      note: reduced.setup.run.note,
      breakaway,
    },
    { palette },
  )
