import { z } from 'zod'

const picture = z.object({
  caption: z.string(),
  light: z.string().describe('SVG text for a light page.'),
  dark: z.string().describe('SVG text for a dark page.'),
})

/** What a record says beyond its friction curve. */
export const beyondAnswer = z
  .object({
    parts: z.array(
      z.object({
        heading: z.string(),
        sentences: z.array(z.string()).describe('The finding first; then remarks with their next steps.'),
        table: z
          .object({ caption: z.string(), columns: z.array(z.string()), rows: z.array(z.array(z.string())) })
          .nullable(),
        picture: picture.nullable(),
      }),
    ),
    missing: z.array(z.object({ heading: z.string(), takes: z.string().describe('What record would say it.') })),
  })
  .meta({ id: 'Beyond' })

export type BeyondAnswer = z.infer<typeof beyondAnswer>
