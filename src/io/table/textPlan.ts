import type { Encoding } from './encoding.ts'
import type { JudgedColumns } from './judgeColumns.ts'
import { thousandsByte } from './numberBytes.ts'
import { mostProblems, type TableProblem, tableProblem } from './problems.ts'
import type { Dialect } from './rawRecord.ts'
import type { ReadOptions } from './readOptions.ts'
import type { HeadedColumn } from './recognise.ts'
import type { RowPlan } from './rowPlan.ts'
import type { TableShape } from './tableShape.ts'
import type { TextHead } from './textHead.ts'

/** Most columns that a table may have. */
export const mostColumns = 1000

/** How to read the rows below a head. */
export function planRows(text: TextHead, judged: JudgedColumns, encoding: Encoding): RowPlan {
  const { shape, head } = text
  const slots = judged.columnSlots
  const needed = (['time', 'torque', 'frictionForce'] as const).map((name) =>
    slots.indexOf(judged.slots.get(name) ?? -2),
  )
  return {
    marks: {
      separator: shape.separator.charCodeAt(0),
      decimal: shape.decimalMark.charCodeAt(0),
      thousands: thousandsByte(shape.thousandsMark),
    },
    head: { encoding, separator: shape.separator, headings: head.headingCells, units: head.unitCells },
    slots,
    lastNeeded: Math.max(...needed, 0),
    timeSlot: judged.slots.get('time') ?? -1,
    stepSlot: judged.slots.get('step') ?? -1,
    firstLine: head.firstRow + 1,
    keep: mostProblems,
  }
}

/** Things about the table as a whole that only a person can say. */
export function shapeProblems(text: TextHead, options: ReadOptions): TableProblem[] {
  const { shape, head } = text
  const problems: TableProblem[] = []
  const line = head.firstRow + 1
  if (head.columns.length > mostColumns) {
    problems.push(
      tableProblem('tooManyColumns', {
        what: `The table has ${head.columns.length} columns, more than ${mostColumns}.`,
        mend: 'Export only the columns that hold time, step, speed, torque, force, gap and temperature.',
        place: { file: options.file, line },
      }),
    )
  }
  if (shape.decimalUnclear) {
    problems.push(
      tableProblem('decimalUnclear', {
        what: 'Nothing tells whether 1,234 means one and a bit or a thousand and more.',
        mend: 'Say so with --decimal comma or --decimal point.',
        place: { file: options.file, line },
      }),
    )
  }
  const headings = head.headingCells.length
  if (isShort(text) && !asTwice(shape, headings) && !isNumbered(options)) {
    problems.push(
      tableProblem('headingsShort', {
        what: `The rows have ${shape.lastFilled} cells under ${head.headingCount} headings, so it cannot be told which heading belongs to which column.`,
        mend: 'Add the missing heading to the file, also when it is that of row numbers, or name columns by number, such as --column "#2=time" --unit "#2=s".',
        place: { file: options.file, line: head.headerLine + 1 },
      }),
    )
  }
  if (asTwice(shape, headings)) {
    problems.push(
      tableProblem('separatorUnclear', {
        what: `The rows have ${shape.cells} cells under ${headings} headings: commas seem to be both decimal marks and separators.`,
        mend: 'Export the record again with semicolons or tabs between the columns.',
        place: { file: options.file, line },
      }),
    )
  }
  return problems
}

/** Twice as many cells as headings, all of them whole: decimal commas between commas. */
const asTwice = (shape: TableShape, headings: number): boolean =>
  shape.separator === ',' && shape.onlyWhole && headings >= 2 && shape.cells === 2 * headings

/** Fewer headings than columns, so that nothing tells which is which. */
const isShort = ({ shape, head }: TextHead): boolean =>
  shape.separator !== ' ' && head.headingCells.length > 0 && head.headingCount < shape.lastFilled

const isNumbered = (options: ReadOptions): boolean =>
  Object.keys({ ...options.mapping?.columns, ...options.columns }).some((key) => /^#\d+$/.test(key))

/** The columns with their headings, without them where nothing tells which heading belongs to which. */
export const headedColumns = (text: TextHead): readonly HeadedColumn[] =>
  isShort(text) ? text.head.columns.map(() => ({ heading: '', unitBelow: '' })) : text.head.columns

/** What was found out about the way the file is written. */
export function dialectOf({ shape, head }: TextHead): Omit<Dialect, 'format' | 'encoding' | 'repeatedHeadings'> {
  return {
    separator: shape.separator,
    decimalMark: shape.decimalMark,
    thousandsMark: shape.thousandsMark,
    preambleLines: head.headerLine < 0 ? head.firstRow : head.headerLine,
    headerLine: head.headerLine < 0 ? null : head.headerLine + 1,
    unitRow: head.unitCells.length > 0,
  }
}
