import type { ReportBlock, ReportContent } from '../../src/report/index.ts'

/** Every text that a reader of the report gets to see, block by block. */
export const allTexts = ({ title, subtitle, author, date, summary, sections, identity }: ReportContent): string[] =>
  [
    title,
    subtitle,
    author ?? '',
    date ?? '',
    identity,
    ...summary,
    ...sections.flatMap(({ heading, blocks }) => [heading, ...blocks.flatMap(textsOf)]),
  ].filter((text) => text !== '')

function textsOf(block: ReportBlock): string[] {
  switch (block.kind) {
    case 'paragraph':
      return [block.lead ?? '', block.text]
    case 'facts':
      return block.facts.flatMap(({ term, value }) => [term, value])
    case 'table': {
      const { caption, columns, rows, notes } = block.table
      return [caption, ...columns.flatMap(({ head, unit }) => [head, unit]), ...rows.flat(), ...notes]
    }
    case 'figure':
      return [block.figure.caption]
    case 'remarks':
      return block.remarks.flatMap(({ words, where, sentences, next, letter }) => [
        words,
        where,
        letter,
        ...sentences,
        ...next,
      ])
    case 'checklist':
      return block.items.flatMap(({ item, state, text }) => [item, state, text])
    case 'list':
      return [...block.items]
  }
}

/** Text without what only sets it: blanks of any width and places to break. */
export const bare = (text: string): string => text.replace(/[\s\u200b\u00ad]+/gu, '')
