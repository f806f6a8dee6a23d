import type { CheckedItem, NumberedFigure, ReportBlock, ReportContent, ReportTable } from '../reportContent.ts'
import { isWide } from '../words/isWide.ts'
import { linedUp } from '../words/linedUp.ts'
import { stateWords } from '../words/markWords.ts'

/** Room for a picture on A4, mm. */
const widest = 170
const tallest = 215

/**
 * The content as the page of the PDF wants it: a date as numbers, pictures with a width that fits the page, cells lined up.
 * All words stay data, so that none is read as markup.
 */
export const typstData = ({ author, date, sections, ...rest }: ReportContent): object => ({
  ...rest,
  author,
  date: date === null ? null : dateOf(date),
  byline: [author, date].filter((part) => part !== null).join(' · '),
  sections: sections.map((section) => ({ ...section, blocks: section.blocks.map(blockOf) })),
})

/** Throws RangeError for what is no day; a report's date comes from a clock or was checked when it was read. */
function dateOf(date: string): object {
  const [, year, month, day] = (/^(\d{4})-(\d\d)-(\d\d)$/.exec(date) ?? []).map(Number)
  const there = new Date(Date.UTC(year, month - 1, day))
  if (there.toJSON()?.slice(0, 10) !== date) throw new RangeError(`date must be a day as in 2026-11-25, got ${date}`)
  return { year, month, day }
}

function blockOf(block: ReportBlock): object {
  switch (block.kind) {
    case 'figure':
      return { kind: block.kind, figure: figureOf(block.figure) }
    case 'table':
      return { kind: block.kind, table: tableOf(block.table) }
    case 'checklist':
      return { kind: block.kind, items: block.items.map(itemOf) }
    default:
      return block
  }
}

const itemOf = (item: CheckedItem): object => ({ ...item, words: stateWords[item.state] })

const tableOf = (table: ReportTable): object => ({
  ...table,
  wide: isWide(table),
  rows: linedUp(table.columns, table.rows),
})

const figureOf = ({ number, caption, words, svg }: NumberedFigure): object => ({
  number,
  caption,
  words,
  svg,
  width: widthOf(svg),
})

/** As wide as the page allows, less for a picture that would be too tall. */
function widthOf(svg: string): number {
  const [width, height] = ['width', 'height'].map((name) =>
    Number(new RegExp(`^<svg[^>]* ${name}="([\\d.]+)"`).exec(svg)?.[1]),
  )
  if (!(width > 0 && height > 0))
    throw new RangeError(`a figure must say its width and height, got ${svg.slice(0, 80)}`)
  return Math.min(widest, (tallest * width) / height)
}
