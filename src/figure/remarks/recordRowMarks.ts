import { remarkWords } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup } from '../markup.ts'
import type { Block, Sheet } from '../sheet.ts'
import { signMark } from '../signs.ts'
import { wrapped } from '../textWidth.ts'
import type { RecordRow } from './remarkRows.ts'

/** Remarks on the record as a whole: they have no place on the axis, so their sentences, which hold the numbers, stand below it. */
export function recordRowMarks(rows: readonly RecordRow[], top: number, sheet: Sheet): Block {
  if (rows.length === 0) return { markup: '', height: 0 }
  const { palette, width } = sheet
  const pieces: Markup[] = [
    lettering('on the whole record', { x: 16, y: top + 12, fill: palette.quiet, size: sizes.small, italic: true }),
  ]
  let y = top + 30
  for (const { kind, weight, remark, more } of rows) {
    pieces.push(signMark({ letter: '', weight }, { x: 24, y: y + 1 }, palette))
    const times = more === 0 ? '' : `, ${more + 1} times`
    pieces.push(lettering(`${remarkWords[kind].words}${times}`, { x: 38, y: y + 5, fill: palette.ink }))
    for (const line of wrapped(remark.sentence, sizes.small, width - 54)) {
      y += 16
      pieces.push(lettering(line, { x: 38, y: y + 4, fill: palette.quiet, size: sizes.small }))
    }
    y += 23
  }
  return { markup: element('g', {}, ...pieces), height: y - top - 6 }
}
