import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** The written limit, the rule that was chosen, and the verdict; left out where the study has none. */
export const limitSection: SectionOf = (input, numbers) => {
  const { limit } = input.texts
  if (limit === undefined) return { heading: 'Limit', blocks: [] }
  return {
    heading: 'Limit',
    blocks: [
      ...limit.sentences.map((text) => ({ kind: 'paragraph', text }) as const),
      {
        kind: 'facts',
        facts: [
          { term: 'Limit', value: limit.limit },
          { term: 'Decision rule', value: limit.rule },
        ],
      },
      ...figureNamed('limit', input, numbers),
    ],
  }
}
