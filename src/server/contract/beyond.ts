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

/** Late turns against early ones. */
export const turnChangeAnswer = z
  .object({
    sentences: z.array(z.string()).describe('What was found, then what to do next.'),
    pictures: z.array(picture).describe('Profiles, then the map; none where early and late cannot be compared.'),
  })
  .meta({ id: 'TurnChange' })

export type TurnChangeAnswer = z.infer<typeof turnChangeAnswer>
export type BeyondAnswer = z.infer<typeof beyondAnswer>
