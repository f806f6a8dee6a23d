import { z } from 'zod'
import { by, identifier, recordWord, why } from './text.ts'

/** What a paper may be about. */
const studyPaperKinds = ['question', 'runSheet', 'decision', 'notes'] as const
const recordPaperKinds = ['mends', 'runSheet'] as const
const labPaperKinds = ['material', 'liquid', 'rig', 'fixture'] as const

/** One version of a kept JSON document. Never edited: a save is a new version. */
export const paper = z
  .object({
    subject: z.enum(['lab', 'study', 'record']),
    subjectId: z.string(),
    kind: z.string(),
    name: z.string().describe('Empty where a subject has one of a kind.'),
    version: z.number().describe('From 1; 0 with a content of null where nobody has kept one yet.'),
    supersedes: z.number().nullable(),
    content: z.unknown(),
    by: z.string(),
    why: z.string(),
    at: z.string().describe('Instant, UTC.'),
  })
  .meta({ id: 'Paper' })

/** That there is a paper, without its content. */
export const paperNote = paper.omit({ content: true }).meta({ id: 'PaperNote' })

/** A paper on its way in; `If-Match` says after which version. */
export const newPaper = z
  .strictObject({ content: z.unknown().refine((content) => content !== undefined, 'Send a content.'), by, why })
  .meta({ id: 'NewPaper' })

export const studyPaperPlace = z.object({ study: identifier, kind: z.enum(studyPaperKinds) })
export const recordPaperPlace = z.object({ record: recordWord, kind: z.enum(recordPaperKinds) })
export const labPaperPlace = z.object({ kind: z.enum(labPaperKinds), name: identifier })

export type Paper = z.infer<typeof paper>
export type PaperNote = z.infer<typeof paperNote>
export type NewPaper = z.infer<typeof newPaper>
