import type { ReportBlock } from '../reportContent.ts'
import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** What else the record says: vibration, wear, change around the turn. Left out where there is nothing of it. */
export const beyondSection: SectionOf = (input, numbers) => ({
  heading: 'Beyond the curve',
  blocks: (input.beyond ?? []).flatMap(({ heading, sentences, figure, table }): ReportBlock[] => [
    { kind: 'paragraph', text: `${heading}. ${sentences.join(' ')}` },
    ...(figure === undefined ? [] : figureNamed(figure, input, numbers)),
    ...(table === undefined
      ? []
      : [
          numbers.table({
            caption: table.caption,
            columns: table.columns.map((head) => ({ head, unit: '', align: 'left' })),
            rows: table.rows,
            notes: [],
          }),
        ]),
  ]),
})
