import { unitsOf } from '../../core/quantity/index.ts'
import { alignHeadings } from './alignHeadings.ts'
import { splitCells } from './cells.ts'
import { headingParts } from './headingParts.ts'
import { meaningOf } from './headingWords.ts'
import type { HeadLines } from './headLines.ts'
import { isNumber, numberShape } from './numberShape.ts'
import { sectionNumber } from './oddLine.ts'
import type { PreambleEntry, Separator } from './rawRecord.ts'
import type { HeadedColumn } from './recognise.ts'
import { looksLikeRow, type TableShape } from './tableShape.ts'

/** What stands above the rows. Lines count from 0. */
export interface TableHead {
  readonly columns: readonly HeadedColumn[]
  /** Cells of the line of headings, empty ones at its end among them. */
  readonly headingCount: number
  /** Cells of the lines of headings and units as they will look when they come again; empty without such a line. */
  readonly headingCells: readonly string[]
  readonly unitCells: readonly string[]
  /** −1 where the table has none. */
  readonly headerLine: number
  readonly firstRow: number
  readonly preamble: readonly PreambleEntry[]
  /** Number in a line such as "Step 1" above the headings. */
  readonly section: number | undefined
}

/** Blank lines that may stand between headings, units and rows. */
const mostBlanks = 5
const mostPreamble = 1000

/** Finds the rows, and above them units, headings and preamble; undefined where no line is a row. */
export function findHead(lines: HeadLines, shape: TableShape): TableHead | undefined {
  const firstRow = findFirstRow(lines, shape)
  if (firstRow === undefined) return undefined
  const { separator } = shape
  const row = lines.text(firstRow)
  const lowest = textAbove(lines, firstRow)
  const upper = lowest === undefined ? undefined : textAbove(lines, lowest.first)
  const cells = lowest === undefined ? [] : trimmed(splitCells(lowest.text, separator))
  const unitRow = upper !== undefined && isUnitRow(cells, trimmed(splitCells(upper.text, separator)))
  const header = unitRow ? upper : lowest
  const headingCells = header === undefined ? [] : trimmed(splitCells(header.text, separator))
  const headed = header !== undefined && isHeadings(headingCells, shape.numbers)
  const width = Math.max(shape.cells, headed && separator !== ' ' ? headingCells.length : 0)
  const place = (text: string | undefined, some: readonly string[]): readonly string[] =>
    separator === ' ' && text !== undefined ? alignHeadings(uncommented(text), row, width) : some.map(uncommented)
  const headings = headed ? place(header.text, headingCells) : []
  const units = headed && unitRow ? place(lowest?.text, cells) : []
  const columns = Array.from({ length: width }, (_, at) => ({
    heading: headings[at] ?? '',
    unitBelow: units[at] ?? '',
  }))
  const preamble = readPreamble(lines, headed ? header.first : firstRow, separator)
  return {
    columns,
    headingCount: headed ? splitCells(header.text, separator).length : 0,
    headingCells: headed ? headingCells : [],
    unitCells: headed && unitRow ? cells : [],
    headerLine: headed ? header.first : -1,
    firstRow,
    preamble,
    section: preamble
      .map(({ key, value }) => sectionNumber(`${key} ${value}`)?.number)
      .findLast((found) => found !== undefined),
  }
}

function findFirstRow(lines: HeadLines, shape: TableShape): number | undefined {
  const enough = Math.max(2, Math.ceil(0.6 * shape.numbers))
  const isRow = (line: number): boolean => {
    const row = splitCells(lines.text(line), shape.separator).map(numberShape)
    return looksLikeRow(row) && row.filter(isNumber).length >= enough
  }
  for (let line = 0, candidate: number | undefined; line < lines.count; line++) {
    if (isBlank(lines.text(line))) continue
    if (!isRow(line)) candidate = undefined
    else if (candidate !== undefined) return candidate
    else candidate = line
    if (candidate !== undefined && line >= lines.count - 1) return candidate
  }
  // No two rows follow each other: the first one alone.
  for (let line = 0; line < lines.count; line++) if (isRow(line)) return line
  return undefined
}

interface TextAbove {
  readonly text: string
  /** Its first line: a quoted heading may hold line ends. */
  readonly first: number
}

/** The next text above a line, over a few blank lines. */
function textAbove(lines: HeadLines, below: number): TextAbove | undefined {
  let line = below - 1
  while (line >= 0 && line >= below - mostBlanks && isBlank(lines.text(line))) line--
  if (line < 0 || isBlank(lines.text(line))) return undefined
  let text = lines.text(line)
  if (quotes(text) % 2 === 0) return { text, first: line }
  const alone = { text, first: line }
  for (let first = line - 1; first >= 0 && first > line - 6; first--) {
    text = `${lines.text(first)} ${text}`
    if (quotes(text) % 2 === 0) return { text, first }
  }
  return alone
}

/** Without the sign by which some programs mark lines that hold no numbers. */
const uncommented = (text: string): string => text.replace(/^\s*[#%]+\s*/, '')

const quotes = (text: string): number => text.split('"').length - 1
const isBlank = (text: string): boolean => /^[\s;,|]*$/.test(text)

function trimmed(cells: readonly string[]): readonly string[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== '') + 1)
}

/** More units than words of the trade, and words above it. */
function isUnitRow(cells: readonly string[], above: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '')
  const units = filled.filter((cell) => unitsOf(cell).length > 0).length
  const wordsAbove = above.filter(hasWord).length
  if (units === 0 || units * 2 < filled.length || wordsAbove === 0) return false
  return units > filled.filter(hasWord).length || wordsAbove >= units
}

/** A word of the trade, as headings hold. */
export const hasWord = (cell: string): boolean =>
  headingParts(cell, '').some(({ words }) => meaningOf(words).matches.length > 0)

/** At least two texts, and half as many as there are numbers in a row. */
function isHeadings(cells: readonly string[], numbers: number): boolean {
  const texts = cells.filter((cell) => numberShape(cell) === 'text').length
  return texts >= 2 && texts * 2 >= Math.min(numbers, cells.filter((cell) => cell !== '').length)
}

function readPreamble(lines: HeadLines, end: number, separator: Separator): PreambleEntry[] {
  const entries: PreambleEntry[] = []
  for (let line = 0; line < end && entries.length < mostPreamble; line++) {
    const text = uncommented(lines.text(line)).trim()
    if (isBlank(text)) continue
    entries.push({ line: line + 1, ...keyAndValue(text, separator) })
  }
  return entries
}

function keyAndValue(text: string, separator: Separator): { readonly key: string; readonly value: string } {
  const cells = separator === ' ' ? text.split(/\t| {2,}/).map((cell) => cell.trim()) : splitCells(text, separator)
  const filled = cells.filter((cell) => cell !== '')
  const joint = /\s/.test(separator) ? ' ' : `${separator} `
  if (filled.length > 1) return { key: filled[0].replace(/\s*[:=]$/, ''), value: filled.slice(1).join(joint) }
  const [one] = filled.length === 1 ? filled : [text]
  const pair = /^([^:=]{1,80}?)\s*[:=]\s*(\S.*)$/.exec(one)
  return pair === null ? { key: '', value: one } : { key: pair[1], value: pair[2] }
}
