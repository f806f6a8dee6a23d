import type { ByteSource } from './byteSource.ts'
import { splitCells } from './cells.ts'
import type { Encoding } from './encoding.ts'
import { type HeadLines, headLines } from './headLines.ts'
import { shown, type TableProblem, tableProblem } from './problems.ts'
import type { Separator } from './rawRecord.ts'
import type { ReadOptions } from './readOptions.ts'
import { noRows } from './rowProblems.ts'
import { findHead, hasWord, type TableHead } from './tableHead.ts'
import { sniffTable, type TableShape } from './tableShape.ts'
import { longestLine } from './wholeLines.ts'

/** The beginning of a text, understood. */
export interface TextHead {
  readonly shape: TableShape
  readonly head: TableHead
  /** Bytes read so far from the first row on. */
  readonly begun: Uint8Array
  /** LF where there is any, else CR. */
  readonly lineEnd: number
  /** All there is was read: no more lines than this stand below the headings. undefined where bytes follow. */
  readonly mostRows: number | undefined
  /** Mean length of the lines seen below the headings, in bytes. */
  readonly rowBytes: number
}

const firstLook = 1 << 20

/** Reads as far as it takes to see headings and rows. Gives a problem where there are none. */
export async function readTextHead(
  source: ByteSource,
  encoding: Encoding,
  options: ReadOptions,
): Promise<TextHead | TableProblem> {
  let bytes = new Uint8Array(0)
  for (let size = Math.min(firstLook, 2 * (source.size ?? firstLook) + 2); ; size = Math.max(4 * size, firstLook)) {
    const longer = new Uint8Array(size)
    longer.set(bytes)
    const end = bytes.length + (await source.read(longer, bytes.length))
    bytes = longer.subarray(0, end)
    const whole = end < size
    const lines = headLines(bytes, encoding, whole)
    const shape = sniffTable(lines, options)
    const head = shape === undefined ? undefined : findHead(lines, shape)
    if (shape !== undefined && head !== undefined) return understood(bytes, lines, { shape, head, whole })
    if (whole || size >= longestLine) return noTable(lines, { whole, file: options.file })
  }
}

function understood(
  bytes: Uint8Array,
  lines: HeadLines,
  found: { readonly shape: TableShape; readonly head: TableHead; readonly whole: boolean },
): TextHead {
  const { shape, head, whole } = found
  const begin = lines.start(head.firstRow)
  const rows = lines.count - head.firstRow
  return {
    shape,
    head,
    mostRows: whole ? rows : undefined,
    begun: bytes.subarray(begin),
    lineEnd: bytes.includes(10) ? 10 : 13,
    rowBytes: (lines.start(lines.count) - begin) / Math.max(1, rows),
  }
}

const separators: readonly Separator[] = ['\t', ';', ',', '|', ' ']

/** Says why a text is no table: headings alone, one endless line, or something else. */
function noTable(
  lines: HeadLines,
  about: { readonly whole: boolean; readonly file: string | undefined },
): TableProblem {
  const place = { file: about.file }
  for (let line = 0; line < Math.min(lines.count, 200); line++) {
    const text = lines.text(line).slice(0, 4096)
    for (const separator of separators) {
      if (splitCells(text, separator).slice(0, 40).filter(hasWord).length >= 2)
        return { ...noRows(about.file), place: { ...place, line: line + 1 } }
    }
  }
  if (lines.count === 0 || (!about.whole && lines.count < 3)) {
    return tableProblem('lineTooLong', {
      what: `The first line is longer than ${longestLine / 2 ** 20} MiB.`,
      mend: 'Hand in a table with one row per line.',
      place: { ...place, line: 1 },
    })
  }
  return tableProblem('notATable', {
    what: 'No line of the file reads as a row of at least two numbers.',
    mend: 'Export the record as a table with one row per line, or name the marks with --separator and --decimal.',
    place: { ...place, line: 1, cell: shown(lines.text(0)) },
  })
}
