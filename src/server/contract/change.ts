import { z } from 'zod'

/** Who changed something, when and why; `number` is its line in the history. */
export const change = z
  .object({ number: z.number(), at: z.string(), who: z.string(), why: z.string() })
  .meta({ id: 'Change' })

/** A study, a sample or the lab as it is called. */
export const titled = z
  .object({ id: z.string(), name: z.string(), note: z.string(), version: z.number(), change })
  .meta({ id: 'Titled' })
