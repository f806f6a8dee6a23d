import { type LoopOptions, loopOf } from '../../core/reduce/questions/index.ts'
import { done, type Loop, type Outcome, type Outside } from '../../core/terms/index.ts'
import { loopFigure, type PaletteName } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile, type ReduceFileArgs } from '../reduceFile.ts'
import { headOf, textOf } from './answered.ts'

/** A record with the loop between its rising and falling speeds. */
export interface LoopOfFile {
  readonly reduced: ReducedRecord
  readonly loop: Loop
}

/** Reads a record and compares up with down. */
export const loopOfFile = (
  args: ReduceFileArgs & { readonly loop: LoopOptions },
  outside: Outside,
): Promise<Outcome<LoopOfFile>> =>
  lookAtFile(args, outside, (channels, reduced) => {
    const { setup, reduction } = reduced
    const loop = loopOf({ channels, setup, reduction }, args.loop)
    return loop.ok ? done({ reduced, loop: loop.value }) : loop
  })

/** For machines; SI throughout. Fields: docs/verbs/loop.md. */
export const loopText = ({ reduced, loop }: LoopOfFile): string => textOf({ ...headOf(reduced), ...loop })

/** The picture as SVG text. */
export const drawLoop = ({ reduced, loop }: LoopOfFile, palette: PaletteName): string =>
  loopFigure(
    {
      title: `Up and down: ${reduced.setup.run.sample ?? reduced.file}`,
      caption: loop.sentence,
      note: reduced.setup.run.note,
      loop,
    },
    { palette },
  )
