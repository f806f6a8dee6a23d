import type { SectionOf } from './sectionOf.ts'

/** What somebody wanted to know; nobody having said it is worth saying. */
export const questionSection: SectionOf = ({ texts }) => ({
  heading: 'Question',
  blocks: [
    {
      kind: 'paragraph',
      text:
        texts.question?.trim() ||
        'No question was written down. Without one a reader cannot tell which speeds and which differences matter.',
    },
  ],
})
