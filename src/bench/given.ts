import type { MovedWindow, ReduceOptions } from '../core/terms/index.ts'
import type { ColumnAnswers, ReadOptions, SetupFile } from '../io/index.ts'

/** What was said about a record's columns and dialect beside its setup; a kept mapping as it was then, not by its name alone. */
export type SaidReading = Pick<ReadOptions, 'columns' | 'separator' | 'decimalMark' | 'encoding' | 'sheet' | 'mapping'>

/** What was said beside record and setup. With the program it decides every bit of a result, so a result names it. */
export interface Given {
  readonly reading: SaidReading
  /** Options that go before those of the setup. */
  readonly options: Partial<ReduceOptions>
  /** Windows that somebody moved, in order of their steps. */
  readonly windows?: readonly MovedWindow[]
}

/** Nothing was said: the setup and the program decide. */
export const nothingGiven: Given = { reading: {}, options: {} }

/**
 * As much of it as was said, for the origin of a result; undefined where nothing was. Names stand in one order, whatever
 * order they were said in: a store may sort them, and the result must come out the same.
 */
export const givenInOrigin = ({ reading, options, windows = [] }: Given): object | undefined =>
  filled({ reading, options, windows: windows.length === 0 ? undefined : windows.map(namesInOrder) })

const namesInOrder = ({ from, step, to }: MovedWindow): MovedWindow => ({ from, step, to })

/** What `givenInOrigin` wrote, out of the options of a kept result. */
export function givenFromOrigin(options: Readonly<Record<string, unknown>>): Given {
  const { given } = options
  if (!isRecord(given)) return nothingGiven
  // Written by `givenInOrigin` alone, and covered by the checksum that is the id of the result.
  const { reading, options: said, windows } = given as Partial<Given>
  return { reading: reading ?? {}, options: said ?? {}, ...(windows === undefined ? {} : { windows }) }
}

/** How to read the record: what was said goes before the columns of the setup, and both before a kept mapping. */
export const readingWith = (said: SaidReading, columns: SetupFile['columns']): ReadOptions => ({
  ...said,
  columns: columnsTogether(columnsOfSetup(columns), said.columns ?? {}),
})

/** The setup says `ignore` where the reader leaves a column aside. */
const columnsOfSetup = (columns: SetupFile['columns']): ColumnAnswers =>
  Object.fromEntries(
    Object.entries(columns).map(([heading, { channel, unit }]) => [
      heading,
      {
        ...(channel === undefined ? {} : { channel: channel === 'ignore' ? null : channel }),
        ...(unit === undefined ? {} : { unit }),
      },
    ]),
  )

/** Answers of both, the second before the first. */
export function columnsTogether(first: ColumnAnswers, second: ColumnAnswers): ColumnAnswers {
  const headings = new Set([...Object.keys(first), ...Object.keys(second)])
  return Object.fromEntries([...headings].map((heading) => [heading, { ...first[heading], ...second[heading] }]))
}

/** Names in order, without what is undefined or holds nothing; undefined where nothing is left. */
function filled(said: object): object | undefined {
  const entries = Object.entries(said)
    .map(([name, value]) => [name, isRecord(value) ? filled(value) : value] as const)
    .filter(([, value]) => value !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  return entries.length === 0 ? undefined : Object.fromEntries(entries)
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
