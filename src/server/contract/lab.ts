import { z } from 'zod'
import { change } from './change.ts'
import { paper } from './paper.ts'

/** The lab at a glance. */
export const labAnswer = z
  .object({
    id: z.string(),
    name: z.string(),
    where: z.string().describe('Folder or address, without a password.'),
    engine: z.enum(['sqlite', 'postgres']),
    program: z.string(),
    demo: z.boolean().describe('Invented data that came with the program.'),
    counts: z.object({
      studies: z.number(),
      samples: z.number(),
      records: z.number(),
      reduced: z.number(),
      setups: z.number(),
    }),
    people: z.array(z.string()).describe('Whoever stands in the history, the last one first.'),
    papers: z.array(paper).describe("The lab's own materials, liquids, rigs and fixtures."),
  })
  .meta({ id: 'Lab' })

/** One thing that a change made or corrected. */
const historyEntry = z
  .object({
    what: z.enum(['created', 'corrected']),
    kind: z.string(),
    id: z.string(),
    version: z.number().nullable(),
    change,
  })
  .meta({ id: 'HistoryEntry' })

export const historyQuery = z.object({
  after: z.coerce.number().int().min(0).default(0).describe('Only lines after this number.'),
  limit: z.coerce.number().int().min(1).max(1000).default(200),
  newest: z.enum(['true', 'false']).default('false').describe('The last lines, the newest first.'),
})

export const historyAnswer = z
  .object({ entries: z.array(historyEntry), last: z.number().describe('Number of the last line that there is.') })
  .meta({ id: 'History' })

const used = {
  records: z.number(),
  distance: z.number().describe('Sliding distance over all of them, m, as far as they are reduced.'),
  first: z.string().nullable().describe('Day of the first use.'),
  last: z.string().nullable(),
  studies: z.array(z.string()),
}

/** How often bodies were used. */
export const bodiesAnswer = z
  .object({
    ballSets: z.array(z.object({ name: z.string(), material: z.string().nullable(), ...used })),
    plates: z.array(
      z.object({
        sample: z.string(),
        name: z.string(),
        material: z.string().nullable(),
        tracks: z.array(z.object({ radius: z.number().nullable().describe('m'), ...used })),
      }),
    ),
  })
  .meta({ id: 'Bodies' })

export type LabAnswer = z.infer<typeof labAnswer>
export type HistoryAnswer = z.infer<typeof historyAnswer>
export type BodiesAnswer = z.infer<typeof bodiesAnswer>
