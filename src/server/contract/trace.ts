import { z } from 'zod'

const values = z.array(z.number().nullable())

export const traceQuery = z.object({
  from: z.coerce.number().optional().describe('s, on the clock of the record; its begin if left out'),
  to: z.coerce.number().optional(),
  pixels: z.coerce.number().int().min(1).max(8192).default(1024).describe('Columns of the picture.'),
  channels: z.string().max(200).optional().describe('Names with commas between; all if left out.'),
})

/** Smallest and largest value of each column of a picture; the columns share the time evenly, null is a gap. */
export const traceAnswer = z
  .object({
    record: z.tuple([z.number(), z.number()]).describe('First and last time of the record, s.'),
    rows: z.number().describe('Rows of the whole record.'),
    from: z.number().describe('s'),
    to: z.number(),
    inside: z.number().describe('Rows between them.'),
    names: z.array(z.string()).describe('All channels of the record but time.'),
    columns: z.record(z.string(), z.object({ min: values, max: values })),
    exact: z
      .object({ time: z.array(z.number()), values: z.record(z.string(), values) })
      .nullable()
      .describe('The rows themselves where there are no more than four a pixel.'),
  })
  .meta({ id: 'Trace' })

export type TraceAnswer = z.infer<typeof traceAnswer>
