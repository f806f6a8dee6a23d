import { methodParagraphs } from '../method/methodParagraphs.ts'
import type { SectionOf } from './sectionOf.ts'

export const methodSection: SectionOf = (input) => ({
  heading: 'Method',
  blocks: methodParagraphs(input).map(({ lead, text }) => ({ kind: 'paragraph', lead, text })),
})
