import type { Unit } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'
import { type HeadPlace, missingProblems, questionProblem, unusedKeyProblem } from './columnProblems.ts'
import type { TableProblem } from './problems.ts'
import type { ColumnGuess } from './rawRecord.ts'
import type { ReadOptions } from './readOptions.ts'
import { type AnswerBook, type HeadedColumn, recognise, senseColumns } from './recognise.ts'

/** The columns of a table and where each goes. */
export interface JudgedColumns {
  readonly guesses: readonly ColumnGuess[]
  /** Place in the store of each channel. */
  readonly slots: ReadonlyMap<ChannelName, number>
  /** The same by column of the table, −1 for those left aside. */
  readonly columnSlots: readonly number[]
  readonly units: Readonly<Partial<Record<ChannelName, Unit>>>
  readonly problems: readonly TableProblem[]
}

export function judgeColumns(columns: readonly HeadedColumn[], options: ReadOptions, place: HeadPlace): JudgedColumns {
  const books: AnswerBook[] = [{ source: 'option', answers: options.columns ?? {} }]
  if (options.mapping !== undefined) books.push({ source: 'mapping', answers: options.mapping.columns })
  const { sensed, unused } = senseColumns(columns, books)
  const recognised = recognise(sensed)
  const headings = columns.map(({ heading }) => heading)
  const problems = [
    // A kept mapping may name columns that this file lacks; only what was said for this file must fit.
    ...unused.filter(({ source }) => source === 'option').map(({ key }) => unusedKeyProblem(key, headings, place.file)),
    ...missingProblems(recognised, options.required, place),
    ...recognised.questions.map((question) => questionProblem(question, place)),
  ]
  const slots = new Map<ChannelName, number>()
  const columnSlots = recognised.guesses.map(({ channel }) => {
    if (channel === null) return -1
    slots.set(channel, slots.size)
    return slots.size - 1
  })
  return { guesses: recognised.guesses, slots, columnSlots, units: recognised.units, problems }
}
