import { z } from 'zod'
import { problemDetails } from './problem.ts'

/** That a job was begun. */
export const jobMade = z.object({ job: z.string() }).meta({ id: 'JobMade' })

export const jobWord = z.object({ job: z.string().regex(/^[0-9a-f]{32}$/, 'Name a job by its id.') })

/** `event: progress`. */
export const jobProgress = z.object({ doing: z.string(), done: z.number(), of: z.number() }).meta({ id: 'JobProgress' })

/** `event: done`. */
export const jobDone = z
  .object({
    record: z.string().nullable(),
    known: z.boolean().optional().describe('The lab had these bytes already.'),
    verified: z
      .object({ same: z.number(), findings: z.array(z.object({ what: z.string(), sentence: z.string() })) })
      .optional(),
  })
  .meta({ id: 'JobDone' })

/** A job as it stands; also what its events say. */
export const job = z
  .object({
    job: z.string(),
    what: z.string(),
    state: z.enum(['running', 'done', 'failed', 'stopped']),
    progress: jobProgress.nullable(),
    done: jobDone.nullable(),
    problem: problemDetails.nullable(),
  })
  .meta({ id: 'Job' })

/** `event: changed` of /api/events: something that is kept has changed. */
export const changedEvent = z
  .object({
    number: z.number().describe('Line of the history.'),
    kind: z.string(),
    id: z.string(),
    study: z.string().nullable(),
    record: z.string().nullable(),
    version: z.number().nullable(),
    by: z.string(),
  })
  .meta({ id: 'ChangedEvent' })

export type JobMade = z.infer<typeof jobMade>
export type JobProgress = z.infer<typeof jobProgress>
export type JobDone = z.infer<typeof jobDone>
export type Job = z.infer<typeof job>
export type ChangedEvent = z.infer<typeof changedEvent>
