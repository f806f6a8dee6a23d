import { nearestWord } from '../../core/quantity/index.ts'
import { failed, type Outcome } from '../../core/terms/index.ts'
import { type ByteSource, memorySource, wholeOf } from './byteSource.ts'
import { shown, type TableProblem, tableProblem } from './problems.ts'
import type { ReadOptions } from './readOptions.ts'
import { textRecord, type UnsignedRecord } from './textRecord.ts'
import { ArchiveDamaged, ArchiveTooLarge, pack, unpack } from './zipArchive.ts'

/** Largest workbook, packed and unpacked. A longer text does not fit into one string. */
const mostPacked = 1 << 28
const mostUnpacked = 400 * 2 ** 20
/** Bounds of a sheet (ECMA-376), and the columns that we take. */
const mostRows = 1_048_576
const mostColumns = 1000
/** Sheets that are tried for a table when none is named. */
const mostSheets = 8

/** Reads a sheet of a workbook: the one that is named, else the first that holds a table. */
export async function xlsxRecord(source: ByteSource, options: ReadOptions): Promise<Outcome<UnsignedRecord>> {
  const bytes = await wholeOf(source, mostPacked)
  if (bytes === undefined) return failed(tooLarge(options.file))
  let book: Book
  try {
    book = openBook(bytes)
  } catch (error) {
    if (error instanceof ArchiveTooLarge) return failed(tooLarge(options.file))
    if (error instanceof ArchiveDamaged) return failed(damaged(error.message, options.file))
    throw error
  }
  if (book.sheets.length === 0) return failed(noWorkbook(options.file))
  const wanted = options.sheet === undefined ? undefined : sheetNumber(options.sheet, book.sheets)
  if (options.sheet !== undefined && wanted === undefined)
    return failed(sheetUnknown(options.sheet, book.sheets, options.file))
  const tries = wanted === undefined ? book.sheets.slice(0, mostSheets).map((_, at) => at + 1) : [wanted]
  let first: Outcome<UnsignedRecord> | undefined
  for (const number of tries) {
    const outcome = await readSheetNumber(book, number, options)
    if (outcome.ok || !isNoTable(outcome.problems)) return outcome
    first ??= outcome
  }
  return first ?? failed(noWorkbook(options.file))
}

interface Book {
  readonly files: ReadonlyMap<string, Uint8Array>
  /** Names in their order. */
  readonly sheets: readonly string[]
}

function openBook(bytes: Uint8Array): Book {
  const files = unpack(
    bytes,
    (name) => /^(?:\[Content_Types\]|_rels\/.*|xl\/.*)\.(?:xml|rels)$/.test(name),
    mostUnpacked,
  )
  const workbook = files.get('xl/workbook.xml')
  const text = workbook === undefined ? '' : new TextDecoder().decode(workbook.subarray(0, 1 << 20))
  const sheets = [...text.matchAll(/<(?:\w+:)?sheet\s[^<>]*?name="([^"<>]*)"/g)].map(([, name]) => plainText(name))
  for (const [name, xml] of files) if (name.startsWith('xl/worksheets/')) checkBounds(xml)
  return { files, sheets }
}

/** Refuses addresses that would make the reader fill millions of empty cells. */
function checkBounds(xml: Uint8Array): void {
  const text = new TextDecoder('latin1').decode(xml)
  for (const [, letters, digits] of text.matchAll(/\sr="([A-Za-z]{0,8})(\d{0,12})"/g)) {
    const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0)
    if (column > mostColumns || Number(digits) > mostRows) {
      throw new ArchiveDamaged(
        `a sheet has a cell ${letters}${digits}, outside the ${mostColumns} columns and ${mostRows} rows that are read`,
      )
    }
  }
}

async function readSheetNumber(book: Book, number: number, options: ReadOptions): Promise<Outcome<UnsignedRecord>> {
  const { readSheet } = await import('read-excel-file/universal')
  let rows: readonly (readonly unknown[])[]
  try {
    // Packed anew so that the library sees whole files only. Numbers stay as they are written.
    rows = await readSheet(pack(book.files).buffer, number, { trim: true, parseNumber: (text: string) => text })
  } catch (error) {
    return failed(damaged(error instanceof Error ? error.message : String(error), options.file))
  }
  const text = rows.map((row) => row.map(cellText).join('\t')).join('\n')
  const source = memorySource(new TextEncoder().encode(`${text}\n`))
  return textRecord(source, { format: 'xlsx', encoding: 'utf-8' }, { ...options, separator: '\t' })
}

function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return ''
  if (cell instanceof Date) return Number.isNaN(cell.getTime()) ? '' : cell.toISOString()
  const text = String(cell).replace(/[\t\r\n]+/g, ' ')
  return text.startsWith('"') ? `"${text.replaceAll('"', '""')}"` : text
}

function sheetNumber(sheet: string | number, sheets: readonly string[]): number | undefined {
  const named = sheets.indexOf(String(sheet))
  if (named >= 0) return named + 1
  const number = Number(sheet)
  return Number.isInteger(number) && number >= 1 && number <= sheets.length ? number : undefined
}

const isNoTable = (problems: readonly { readonly kind: string }[]): boolean =>
  problems.every(({ kind }) => kind === 'notATable' || kind === 'noRows')

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }
const plainText = (text: string): string =>
  text.replace(/&(amp|lt|gt|quot|apos);/g, (_, name: string) => entities[name])

const tooLarge = (file: string | undefined): TableProblem =>
  tableProblem('fileTooLarge', {
    what: `The workbook is too large to be read here (more than ${mostUnpacked / 2 ** 20} MiB unpacked).`,
    mend: 'Save the sheet as CSV, or as Parquet.',
    place: { file },
  })

const damaged = (why: string, file: string | undefined): TableProblem =>
  tableProblem('fileDamaged', {
    what: `The workbook cannot be read: ${shown(why)}.`,
    mend: 'Open it in a spreadsheet program and save it again, or export the sheet as CSV.',
    place: { file },
  })

const noWorkbook = (file: string | undefined): TableProblem =>
  tableProblem('notATable', {
    what: 'This is no table: it looks like a ZIP archive without a workbook in it.',
    mend: 'Unpack it and hand in the table inside.',
    place: { file, line: 1 },
  })

function sheetUnknown(sheet: string | number, sheets: readonly string[], file: string | undefined): TableProblem {
  const near = nearestWord(String(sheet).slice(0, 80), sheets)
  return tableProblem('sheetUnknown', {
    class: 'wrongUse',
    what: `The workbook has no sheet "${shown(String(sheet))}".`,
    mend:
      near === undefined
        ? `Use one of ${sheets
            .slice(0, 12)
            .map((name) => `"${shown(name)}"`)
            .join(', ')}.`
        : `Did you mean "${shown(near)}"?`,
    place: { file },
  })
}
