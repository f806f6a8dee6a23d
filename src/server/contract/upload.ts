import { z } from 'zod'
import type { ChannelName } from '../../core/terms/index.ts'
import { problem } from './problem.ts'
import { columnGuess } from './record.ts'
import { by, identifier, line, name, why } from './text.ts'

export const uploadQuery = z.object({
  study: identifier.optional(),
  name: name(255).describe('Name of the file: a text to be read, never a path.'),
})

/** A file that has come whole and lies aside until somebody keeps it. */
export const uploadMade = z
  .object({ upload: z.string(), name: z.string(), size: z.number() })
  .meta({ id: 'UploadMade' })

export const uploadWord = z.object({ upload: z.string().regex(/^[0-9a-f]{32}$/, 'Name an upload by its id.') })

const channel = z.custom<ChannelName>((value) => typeof value === 'string' && value.length < 40)

/** What somebody said about the columns and the dialect of a table. */
export const readingAnswers = z
  .strictObject({
    columns: z
      .record(
        z.string().max(500),
        z.strictObject({ channel: channel.nullable().optional(), unit: line(40).optional() }),
      )
      .optional()
      .describe('By heading or by number (#3); channel null leaves the column aside.'),
    separator: z.enum([',', ';', '\t', '|', ' ']).optional(),
    decimalMark: z.enum(['.', ',']).optional(),
    encoding: z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']).optional(),
    sheet: z.union([line(200), z.number().int()]).optional(),
  })
  .meta({ id: 'ReadingAnswers' })

/** What a file looks like, before it is kept. */
export const uploadLook = z
  .object({
    upload: z.string(),
    name: z.string(),
    size: z.number(),
    columns: z.array(columnGuess),
    head: z
      .object({
        headings: z.array(z.string()),
        rows: z.array(z.array(z.string())).describe('The first rows as they stand in the file, 30 at most.'),
        firstLine: z.number().describe('Line of the first of them.'),
      })
      .nullable(),
    rows: z.number().nullable().describe('null while problems stand in the way.'),
    dialect: z.record(z.string(), z.unknown()).nullable(),
    preamble: z.array(z.object({ line: z.number(), key: z.string(), value: z.string() })),
    problems: z.array(problem),
    known: z.string().nullable().describe('Id of the record that has these bytes already.'),
  })
  .meta({ id: 'UploadLook' })

/** What is said about an upload that is to be kept. */
export const keepUpload = z
  .strictObject({
    channels: readingAnswers.optional(),
    setup: z.string().max(200_000).describe('Text of a setup, or the id of one that the lab has.'),
    study: name(200).optional().describe('That of the upload if left out.'),
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
  .meta({ id: 'KeepUpload' })

export const lookAgain = z.strictObject({ channels: readingAnswers }).meta({ id: 'LookAgain' })

export type UploadMade = z.infer<typeof uploadMade>
export type UploadLook = z.infer<typeof uploadLook>
export type ReadingAnswers = z.infer<typeof readingAnswers>
export type KeepUpload = z.infer<typeof keepUpload>
