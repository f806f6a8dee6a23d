import { type RecordStickSlip, recordStickSlip, vibrationWords } from '../../core/reduce/questions/index.ts'
import { done, type Origin, type Outcome, type Outside, schemaVersion } from '../../core/terms/index.ts'
import { type PaletteName, stickSlipFigure } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile, type ReduceFileArgs } from '../reduceFile.ts'

/** A reduced record with its stick–slip. */
export interface StickSlipOfFile {
  readonly reduced: ReducedRecord
  readonly stickSlip: RecordStickSlip
}

/** Reads and reduces a record and looks at the vibration of every step. */
export const stickSlipOfFile = (args: ReduceFileArgs, outside: Outside): Promise<Outcome<StickSlipOfFile>> =>
  lookAtFile(args, outside, (channels, reduced) => {
    const { setup, reduction } = reduced
    return done({ reduced, stickSlip: recordStickSlip({ channels, setup, reduction }) })
  })

/** For machines; SI throughout. Fields: docs/json.md. */
export interface StickSlipDocument extends RecordStickSlip {
  readonly schemaVersion: typeof schemaVersion
  readonly record: { readonly file: string }
  readonly origin: Origin
}

export const stickSlipText = ({ reduced, stickSlip }: StickSlipOfFile): string => {
  const document: StickSlipDocument = {
    schemaVersion,
    record: { file: reduced.file },
    origin: reduced.origin,
    ...stickSlip,
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

/** The picture as SVG text. */
export const drawStickSlip = ({ reduced, stickSlip }: StickSlipOfFile, palette: PaletteName): string =>
  stickSlipFigure(stickSlipFigureData(reduced, stickSlip), { palette })

/** What the figure shows of a record. */
export function stickSlipFigureData(
  { setup, file }: Pick<ReducedRecord, 'setup' | 'file'>,
  found: RecordStickSlip,
): Parameters<typeof stickSlipFigure>[0] {
  const { criticalSpeed: bracket } = found
  return {
    title: `Stick–slip: ${setup.run.sample ?? file}`,
    caption: found.sentences[0],
    note: setup.run.note,
    steps: found.steps.map(({ step, slidingSpeed, verdict, swing, numbers }) => ({
      step,
      slidingSpeed,
      sticks: verdict === 'stickSlip',
      words: vibrationWords[verdict],
      swing,
      frequency: numbers?.frequency ?? null,
    })),
    naturalFrequency: found.naturalFrequency,
    bracket: bracket?.slides == null ? null : { from: bracket.sticks, to: bracket.slides },
    sentence: found.sentences.join(' '),
  }
}
