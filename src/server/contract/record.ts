import { z } from 'zod'
import type {
  ChannelName,
  Curve,
  Origin,
  RecordStretch,
  Reduction,
  Remark,
  Setup,
  SharedSource,
  schemaVersion,
} from '../../core/terms/index.ts'
import { change } from './change.ts'
import { paper } from './paper.ts'
import { recordBrief } from './study.ts'
import { by, line, name, why } from './text.ts'

/** What a column of the table was taken for. */
export const columnGuess = z
  .object({
    column: z.number().describe('From 1; 0 for a channel that comes from no column.'),
    heading: z.string(),
    unit: z.string(),
    channel: z.custom<ChannelName>().nullable().describe('null for a column that is left aside.'),
    source: z.enum(['guess', 'option', 'mapping']),
    reason: z.string(),
  })
  .meta({ id: 'ColumnGuess' })

/** A reduced record as `kufe reduce --json` prints it; NaN and infinities are null. */
export interface RecordResult {
  readonly schemaVersion: typeof schemaVersion
  readonly record: {
    readonly file: string
    readonly rows: number
    readonly columns: readonly z.infer<typeof columnGuess>[]
    readonly dialect: object
    readonly preamble: readonly { readonly line: number; readonly key: string; readonly value: string }[]
  }
  readonly origin: Origin
  readonly window: Reduction['window']
  readonly remarks: readonly Remark[]
  readonly points: Reduction['points']
  readonly curve: Curve | null
  readonly zeroes: { readonly axialForce: Reduction['forceZero']; readonly torque: Reduction['torqueBlank'] }
  readonly budget: readonly { readonly source: SharedSource; readonly relative: number; readonly share: number }[]
  readonly ripple: Reduction['ripple']
  readonly noiseCorrelation: number | null
  readonly sampleInterval: number | null
  readonly segmentation: Reduction['segmentation']
  readonly steps: Reduction['steps']
}

/** A window that somebody moved: the rows of a step from one time to another count as they are. */
export const movedWindow = z
  .strictObject({
    step: z.number().int(),
    from: z.number().describe('s, on the clock of the record'),
    to: z.number().describe('s'),
  })
  .meta({ id: 'MovedWindow' })

const keptResult = z.object({
  id: z.string(),
  kind: z.enum(['reduction', 'fit']),
  program: z.string(),
  setup: z.string(),
  windows: z.array(movedWindow),
  change,
})

const factsVersion = z.object({
  version: z.number(),
  name: z.string(),
  study: z.string().nullable(),
  sample: z.string().nullable(),
  replicate: z.number().nullable(),
  mountedBy: z.string().nullable(),
  ballSet: z.string().nullable(),
  day: z.string().nullable(),
  setup: z.string().nullable(),
  change,
})

export const recordAnswer = z
  .object({
    record: recordBrief,
    result: z.custom<RecordResult>().nullable().describe('See result.schema.json.'),
    setup: z
      .object({ id: z.string(), text: z.string(), read: z.custom<Setup>().describe('The same in SI.') })
      .nullable(),
    versions: z.array(factsVersion).describe('What people said about it, the oldest first.'),
    results: z.array(keptResult).describe('In the order in which they were made.'),
    papers: z.array(paper),
  })
  .meta({ id: 'Record' })

/** Stretches of the record and what became of them, for the strip. */
export const stretchesAnswer = z
  .object({
    time: z.tuple([z.number(), z.number()]).describe('First and last time, s.'),
    stretches: z.array(z.custom<RecordStretch>()),
  })
  .meta({ id: 'Stretches' })

/** Corrections of what is said about a record. */
export const amendRecord = z
  .strictObject({
    setup: z.string().max(200_000).optional().describe('Text of the setup that is right.'),
    study: name(200).optional(),
    sample: name(200).optional(),
    replicate: z.number().int().min(1).max(1_000_000).optional(),
    mountedBy: line(200).optional(),
    ballSet: line(200).optional(),
    day: z
      .string()
      .regex(/^\d{4}-\d\d-\d\d$/, 'Write the day as 2026-11-25.')
      .optional(),
    by,
    why,
  })
  .meta({ id: 'AmendRecord' })

/** Moved windows of a record: all of them, an empty list puts back what the program chose. */
export const newMends = z
  .strictObject({
    windows: z.array(movedWindow).max(10_000),
    answers: z
      .array(
        z.strictObject({
          kind: line(80),
          step: z.number().int().nullable(),
          answer: line(2000),
        }),
      )
      .max(10_000)
      .optional()
      .describe('Remarks that somebody answered with a reason. Left out, those of the last version stay.'),
    by,
    why,
  })
  .meta({ id: 'NewMends' })

export type ColumnGuess = z.infer<typeof columnGuess>
export type MovedWindow = z.infer<typeof movedWindow>
export type RecordAnswer = z.infer<typeof recordAnswer>
export type StretchesAnswer = z.infer<typeof stretchesAnswer>
export type NewMends = z.infer<typeof newMends>
