import { splitCells } from './cells.ts'
import type { HeadLines } from './headLines.ts'
import { isNumber, type NumberShape, numberShape, separatorWeight } from './numberShape.ts'
import type { DecimalMark, Separator } from './rawRecord.ts'

/** How cells and numbers are written, as told from a sample of lines. */
export interface TableShape {
  readonly separator: Separator
  readonly decimalMark: DecimalMark
  /** Nothing in the sample tells 1,234 from 1.234. */
  readonly decimalUnclear: boolean
  readonly thousandsMark: string | null
  /** No number in the sample has a mark. */
  readonly onlyWhole: boolean
  /** Cells that most rows have, counting empty ones, how many of them are numbers, and where the last filled one stands. */
  readonly cells: number
  readonly numbers: number
  readonly lastFilled: number
}

/** In the order in which equals are preferred. */
const separators: readonly Separator[] = ['\t', ';', '|', ',', ' ']

const sampleLines = 200
const sampleLetters = 1 << 16

/** undefined where no separator makes rows of at least two numbers. */
export function sniffTable(
  lines: HeadLines,
  known: { readonly separator?: Separator; readonly decimalMark?: DecimalMark },
): TableShape | undefined {
  const sample = sampleOf(lines)
  let best: Candidate | undefined
  for (const separator of known.separator === undefined ? separators : [known.separator]) {
    const candidate = tryOut(sample, separator)
    if (candidate !== undefined && candidate.score > (best?.score ?? Number.NEGATIVE_INFINITY)) best = candidate
  }
  if (best === undefined) return undefined
  const { separator, rows, cells, numbers } = best
  const lastFilled = commonest(rows.map((row) => row.findLastIndex((shape) => shape !== 'empty') + 1))
  const onlyWhole = rows.every((row) => row.every((shape) => shape === 'whole' || !isNumber(shape)))
  return { separator, cells, numbers, lastFilled, onlyWhole, ...marksOf(rows.flat(), separator, known.decimalMark) }
}

/** Lines spread evenly over the head, and never more than a good page of them. */
function sampleOf(lines: HeadLines): string[] {
  const step = Math.max(1, lines.count / sampleLines)
  const sample: string[] = []
  let letters = 0
  // From the end: a preamble stands at the beginning. A few lines in any case, should one of them be very long.
  for (let at = lines.count - 1; at >= 0 && (letters < sampleLetters || sample.length < 5); at -= step) {
    const text = lines.text(Math.round(at))
    letters += text.length
    sample.push(text)
  }
  return sample
}

interface Candidate {
  readonly separator: Separator
  readonly rows: readonly (readonly NumberShape[])[]
  readonly cells: number
  readonly numbers: number
  readonly score: number
}

function tryOut(sample: readonly string[], separator: Separator): Candidate | undefined {
  const rows = sample
    .filter((line) => separator === ' ' || line.includes(separator))
    .map((line) => splitCells(line, separator).map(numberShape))
    .filter(looksLikeRow)
  if (rows.length === 0) return undefined
  const cells = commonest(rows.map((row) => row.length))
  const usual = rows.filter((row) => row.length === cells)
  const numbers = commonest(usual.map((row) => row.filter(isNumber).length))
  const score = usual.reduce((sum, row) => sum + row.reduce((all, shape) => all + separatorWeight(shape), 0), 0)
  return { separator, rows, cells, numbers, score }
}

/** At least two numbers, and numbers and empty cells in the majority. */
export function looksLikeRow(row: readonly NumberShape[]): boolean {
  let numbers = 0
  let texts = 0
  for (const shape of row) {
    if (isNumber(shape)) numbers++
    else if (shape !== 'empty') texts++
  }
  return numbers >= 2 && texts <= numbers
}

function commonest(counts: readonly number[]): number {
  const times = new Map<number, number>()
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1)
  let best = counts[0]
  for (const [count, often] of times) if (often > (times.get(best) ?? 0)) best = count
  return best
}

function marksOf(
  shapes: readonly NumberShape[],
  separator: Separator,
  wanted: DecimalMark | undefined,
): Pick<TableShape, 'decimalMark' | 'decimalUnclear' | 'thousandsMark'> {
  const seen = countShapes(shapes)
  const commas = seen.comma > seen.point
  const told = seen.comma + seen.point > 0
  const unclear = wanted === undefined && !told && seen.commaOrThousands > 0 && separator !== ';'
  // A separator that leaves the comma free is chosen where the comma is the decimal mark.
  const guess = told ? commas : seen.commaOrThousands > seen.pointOrThousands
  const decimalMark = wanted ?? (guess ? ',' : '.')
  const other = decimalMark === '.' ? seen.commaOrThousands : seen.pointOrThousands
  // A few such cells are rather misplaced decimals, and those must not be read a thousand times too large.
  const often = wanted === undefined ? other >= 5 && other > 0.02 * seen.numbers : other > 0
  const thousandsMark = seen.thousands ?? (often ? (decimalMark === '.' ? ',' : '.') : null)
  return { decimalMark, decimalUnclear: unclear, thousandsMark: thousandsMark === decimalMark ? null : thousandsMark }
}

function countShapes(shapes: readonly NumberShape[]): {
  readonly point: number
  readonly comma: number
  readonly pointOrThousands: number
  readonly commaOrThousands: number
  readonly numbers: number
  readonly thousands: string | undefined
} {
  const seen = { numbers: 0, point: 0, comma: 0, pointOrThousands: 0, commaOrThousands: 0 }
  const marks = new Map<string, number>()
  for (const shape of shapes) {
    if (isNumber(shape)) seen.numbers++
    if (typeof shape === 'object') {
      marks.set(shape.thousands, (marks.get(shape.thousands) ?? 0) + 1)
      const decimal = shape.decimal ?? { '.': ',', ',': '.' }[shape.thousands]
      if (decimal === '.') seen.point++
      if (decimal === ',') seen.comma++
    } else if (shape === 'point' || shape === 'comma' || shape === 'pointOrThousands' || shape === 'commaOrThousands') {
      seen[shape]++
    }
  }
  const [commonestMark] = [...marks].sort((a, b) => b[1] - a[1])
  return { ...seen, thousands: commonestMark?.[0] }
}
