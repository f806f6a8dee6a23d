import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** The record as it came, and the same folded by turns. */
export const recordSection: SectionOf = (input, numbers) => ({
  heading: 'Record',
  blocks: [...figureNamed('strip', input, numbers), ...figureNamed('turnMap', input, numbers)],
})
