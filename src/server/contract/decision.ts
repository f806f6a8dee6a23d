import { z } from 'zod'

const text = z.string().nullable()

/** A record as a comparison takes it; `src/core/decide` computes with these in the browser as anywhere. */
const replicate = z
  .object({
    record: z.string(),
    name: z.string(),
    sample: z.string().describe('Title of the sample.'),
    points: z
      .array(
        z.object({
          slidingSpeed: z.number().describe('m/s'),
          friction: z.number(),
          own: z.number().describe('Own standard uncertainty, in friction.'),
          shared: z.record(z.string(), z.number()).describe('Shared standard uncertainties, as shares of friction.'),
        }),
      )
      .describe('Trusted points alone.'),
    window: z.object({ low: z.number().nullable(), high: z.number().nullable() }).describe('To be believed, m/s.'),
    rig: z.string().describe('Equal for records of one rig.'),
    fixture: z.string().describe('Equal for records of one fixture.'),
    blocks: z.object({ day: text, operator: text, ballSet: text }),
  })
  .meta({ id: 'Replicate' })

const comparedRecord = z.object({
  record: z.string(),
  name: z.string(),
  sample: z.string(),
  replicate: z.number().nullable(),
  raw: z.string(),
  setup: z.string(),
})

export const replicatesAnswer = z
  .object({
    title: z.string(),
    replicates: z.array(replicate),
    records: z.array(comparedRecord),
    cautions: z
      .array(z.object({ samples: z.array(z.string()), sentence: z.string() }))
      .describe('What makes samples hard to compare: other loads, bodies, liquids, temperatures.'),
    left: z.array(z.object({ name: z.string(), why: z.string() })).describe('Records that cannot take part.'),
  })
  .meta({ id: 'Replicates' })

export type ReplicatesAnswer = z.infer<typeof replicatesAnswer>
