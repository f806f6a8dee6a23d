import { z } from 'zod'
import type { Point } from '../../core/terms/index.ts'

const values = z.array(z.number().nullable())

/** One step looked at closely. Rows are thinned evenly where there are more than 4,000. */
export const stepAnswer = z
  .object({
    step: z.number(),
    point: z.custom<Point>(),
    rows: z.object({
      count: z.number().describe('Rows of the step and up to its neighbours.'),
      every: z.number().describe('Each so-many-th row is here.'),
      time: z.array(z.number()),
      angle: values.describe('rad, running on over the turns'),
      friction: values.describe('After zeroes, blank and inertia; null where contact was lost.'),
      axialForce: values.describe('N, after its zero'),
      gap: values.nullable(),
    }),
    cut: z.object({
      begin: z.number().describe('Time at which the step begins, s.'),
      kept: z.number().describe('Time from which its rows count.'),
      end: z.number().describe('Time at which the step ends.'),
    }),
    memory: z
      .object({
        correlations: z.array(z.number()).describe('Autocorrelation of the readings that count, at lag 0, 1, 2 …'),
        readings: z.number(),
        lag: z.number().describe('Time from one lag to the next, s.'),
        time: z.number().nullable().describe('So many readings weigh as one.'),
      })
      .nullable(),
    budget: z.array(
      z.object({ source: z.string(), relative: z.number(), share: z.number().describe('Of the variance.') }),
    ),
  })
  .meta({ id: 'Step' })

export const turnsQuery = z.object({
  quantity: z.enum(['friction', 'frictionSwing', 'axialForce', 'gap']).default('frictionSwing'),
})

/** A value against angle and turn number, binned. */
export const turnsAnswer = z
  .object({
    quantity: z.string(),
    columns: z.number(),
    rows: z.number(),
    turns: z.array(z.number()).describe('Row r holds turn turns[r] up to but without turns[r + 1].'),
    mean: values.describe('Row after row.'),
    range: z.tuple([z.number(), z.number()]).nullable(),
    steps: z.array(z.object({ number: z.number(), turn: z.number() })),
  })
  .meta({ id: 'Turns' })

export type StepAnswer = z.infer<typeof stepAnswer>
export type TurnsAnswer = z.infer<typeof turnsAnswer>
