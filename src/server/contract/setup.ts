import { z } from 'zod'
import type { Setup } from '../../core/terms/index.ts'

export const setupText = z.strictObject({ text: z.string().max(200_000) }).meta({ id: 'SetupText' })

/** A setup that holds together. One that does not comes back as a 422, each problem with its line. */
export const setupChecked = z
  .object({ id: z.string(), text: z.string(), setup: z.custom<Setup>() })
  .meta({ id: 'SetupChecked' })

/** Setups that the lab has. */
export const setupsAnswer = z
  .object({
    setups: z.array(
      z.object({ id: z.string(), text: z.string(), setup: z.custom<Setup>().nullable(), records: z.number() }),
    ),
  })
  .meta({ id: 'Setups' })

export const questionDocument = z
  .strictObject({ question: z.record(z.string(), z.unknown()).describe("The question's document, as kept.") })
  .meta({ id: 'QuestionDocument' })

/** A question as core plans it, SI throughout, gaps closed from the tables of bodies and liquids. */
export const questionRead = z
  .object({
    question: z.record(z.string(), z.unknown()).describe('A PlanQuestion of core/plan.'),
    taken: z.array(z.string()).describe('What came from the tables, in words.'),
  })
  .meta({ id: 'QuestionRead' })

export type SetupChecked = z.infer<typeof setupChecked>
export type SetupsAnswer = z.infer<typeof setupsAnswer>
