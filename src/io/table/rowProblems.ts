import type { Remark } from '../../core/terms/index.ts'
import type { Clock } from './clock.ts'
import type { Damage, DamageList } from './damage.ts'
import { mostProblems, shown, type TableProblem, tableProblem } from './problems.ts'
import type { DecimalMark } from './rawRecord.ts'
import type { CellMark } from './rowPlan.ts'

/** Above this share of damaged rows the record is refused. Our own choice; no source. */
const mostDamaged = 0.05

/** What was odd about the rows, however they were read. */
export interface RowFindings {
  readonly damage: DamageList
  readonly otherHeadings: CellMark | undefined
  readonly brokenOff: CellMark | undefined
  readonly words: number
  readonly firstWord: CellMark | undefined
  readonly clock: Clock
}

/** What is needed to speak about the rows of a file. */
export interface RowTalk {
  readonly file: string | undefined
  readonly headings: readonly string[]
  readonly decimalMark: DecimalMark
  /** Rows that were kept. */
  readonly rows: number
  /** Column of time from 0, −1 without. */
  readonly timeColumn: number
}

/** Problems of the rows, and how many more there were than are told. */
export function rowProblems(
  reader: RowFindings,
  talk: RowTalk,
): { readonly problems: TableProblem[]; readonly uncounted: number } {
  const problems: TableProblem[] = []
  let uncounted = 0
  if (reader.otherHeadings !== undefined) {
    const { line, cell } = reader.otherHeadings
    problems.push(
      tableProblem('headingsChange', {
        what: `The headings come again in line ${line}, but other ones or in another order.`,
        mend: 'Export all steps with the same columns, or read each part as a record of its own.',
        place: { file: talk.file, line, cell },
      }),
    )
  }
  const { jumps, jumpCount } = reader.clock
  for (const { line, time, before } of jumps.slice(0, mostProblems)) {
    problems.push(
      tableProblem('timeBackwards', {
        what: `Time runs backwards: ${time} comes after ${before}.`,
        mend: 'Take the row out or sort the rows by time; where the clock begins again at each step, name the step column with --column "HEADING=step".',
        place: {
          file: talk.file,
          line,
          column: talk.timeColumn + 1,
          name: headingAt(talk, talk.timeColumn),
          cell: String(time),
        },
      }),
    )
  }
  uncounted += Math.max(0, jumpCount - mostProblems)
  const { damage } = reader
  if (damage.count > mostDamaged * (talk.rows + damage.count)) {
    problems.push(
      tableProblem('tooManyDamaged', {
        what: `${damage.count} of ${talk.rows + damage.count} rows do not read as rows of the table, more than ${100 * mostDamaged} %.`,
        mend: damageMend(damage, talk),
        place: { file: talk.file, line: damage.first[0]?.line },
      }),
      ...damage.first.map((one) => damageProblem(one, talk)),
    )
    uncounted += damage.count - damage.first.length
  } else if (talk.rows === 0) {
    problems.push(noRows(talk.file))
  }
  return { problems, uncounted }
}

/** Where one column that can be spared makes all the damage, that is the short way out. */
function damageMend({ first }: DamageList, talk: RowTalk): string {
  const columns = new Set(first.map(({ kind, column }) => (kind === 'notANumber' ? column : 0)))
  const [column] = columns
  const heading = columns.size === 1 && column > 0 && column - 1 !== talk.timeColumn ? headingAt(talk, column - 1) : ''
  const aside = heading === '' ? '' : `, or leave the column aside with --column "${shown(heading)}=none"`
  return `Mend the rows named below, or say how the file writes its table: --separator, --decimal${aside}.`
}

export const noRows = (file: string | undefined): TableProblem =>
  tableProblem('noRows', {
    what: 'The file has headings, but no rows of numbers below them.',
    mend: 'Export the record again with its data.',
    place: { file },
  })

function damageProblem(damage: Damage, talk: RowTalk): TableProblem {
  return tableProblem(damage.kind, { ...damageWords(damage, talk), place: placeOf(damage, talk) })
}

function damageWords({ kind, column, cell }: Damage, talk: RowTalk): { readonly what: string; readonly mend: string } {
  const name = `"${shown(headingAt(talk, column - 1) || `#${column}`)}"`
  switch (kind) {
    case 'notANumber':
      return { what: `"${shown(cell)}" in column ${name} is no number.`, mend: numberMend(cell, talk.decimalMark) }
    case 'tooFewCells':
      return { what: `The row ends before column ${name}.`, mend: 'Write all cells of the row, empty ones included.' }
    case 'tooManyCells':
      return {
        what: `The row has more than ${talk.headings.length} cells, the first of them too many is "${shown(cell)}".`,
        mend: 'Take the cell out; put a text that holds the separator in quotation marks.',
      }
    case 'noTime':
      return { what: `The row has no time in column ${name}.`, mend: 'Write the time, or take the row out.' }
  }
}

function numberMend(cell: string, decimalMark: DecimalMark): string {
  const other = decimalMark === '.' ? ',' : '.'
  if (/^[-+]?\d*[.,]\d+$/.test(cell) && cell.includes(other)) {
    return `Write it with "${decimalMark}" as the decimal mark, or name the file's own mark with --decimal ${other === ',' ? 'comma' : 'point'}.`
  }
  return 'Write it as a plain number or leave the cell empty.'
}

const headingAt = (talk: RowTalk, column: number): string => talk.headings[column] ?? ''

const placeOf = ({ line, column, cell }: Damage, talk: RowTalk): TableProblem['place'] => ({
  file: talk.file,
  line,
  column,
  name: shown(headingAt(talk, column - 1)),
  cell,
})

/** Findings on rows and cells that left the rest usable. */
export function rowRemarks(reader: RowFindings, talk: RowTalk): Remark[] {
  const remarks: Remark[] = []
  const { damage, brokenOff, words, firstWord, clock } = reader
  const all = talk.rows + damage.count
  if (damage.count > 0 || brokenOff !== undefined) {
    const [first] = damage.first
    const said: string[] = []
    if (first !== undefined) {
      said.push(
        `${damage.count} of ${all} rows were left out; the first is line ${first.line}: ${lowerFirst(damageWords(first, talk).what)}`,
      )
    }
    if (brokenOff !== undefined) said.push(`The last line (${brokenOff.line}) stops early and was left out.`)
    remarks.push({
      kind: 'rowsLeftOut',
      seen: damage.count + (brokenOff === undefined ? 0 : 1),
      limit: Math.floor(mostDamaged * all),
      unit: '',
      sentence: said.join(' '),
      next: first === undefined ? 'Copy the file again if the record should go on.' : damageWords(first, talk).mend,
    })
  }
  if (firstWord !== undefined) {
    remarks.push({
      kind: 'cellsLeftEmpty',
      seen: words,
      limit: 0,
      unit: '',
      sentence: `${words} cells hold a word instead of a number and count as empty; the first is "${shown(firstWord.cell)}" in line ${firstWord.line}, column "${shown(headingAt(talk, firstWord.column - 1))}".`,
      next: 'Look whether the sensor was read there; leave such cells empty.',
    })
  }
  if (clock.restarts > 0) {
    remarks.push({
      kind: 'timeRunsOn',
      seen: clock.restarts,
      limit: 0,
      unit: '',
      sentence: `The clock begins again at ${clock.restarts} steps; the time of the record runs on over them.`,
      next: 'Nothing to do, unless there were pauses between the steps: these are not in the record.',
    })
  }
  return remarks
}

const lowerFirst = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1)
