import { z } from 'zod'

const place = z.object({
  file: z.string().optional(),
  line: z.number().optional(),
  column: z.number().optional(),
  name: z.string().optional(),
  cell: z.string().optional(),
})

/** What is wrong, where, and what would mend it. */
export const problem = z
  .object({
    kind: z.string(),
    class: z.enum(['wrongUse', 'badInput', 'store']),
    place: place.describe('Where: a line, a key, a field of the request, the text that stands there.'),
    what: z.string().describe('What is wrong, one sentence.'),
    mend: z.string().describe('What would mend it, one sentence.'),
  })
  .meta({ id: 'Problem' })

/** Every error answer (RFC 9457), sent as application/problem+json. `detail` says what and mend of the first problem. */
export const problemDetails = z
  .object({
    type: z.string().describe('Names the kind of problem; stable.'),
    title: z.string(),
    status: z.number(),
    detail: z.string(),
    problems: z.array(problem).describe('All that stands in the way, each with what, where and mend.'),
    current: z.unknown().optional().describe('Of a 412: the paper as it stands now; null where there is none.'),
  })
  .meta({ id: 'ProblemDetails', description: 'An error (RFC 9457).' })

/** An error as it comes over the wire. */
export type ProblemDetails = z.infer<typeof problemDetails>
