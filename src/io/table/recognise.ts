import { nearestUnit, type Unit, unitsOf } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'
import { type ColumnAnswer, type ColumnAnswers, keyOfColumn } from './answers.ts'
import { type ColumnSense, plainNames, senseOf } from './columnSense.ts'
import { headingParts } from './headingParts.ts'
import type { ColumnGuess, ColumnSource } from './rawRecord.ts'
import { channelDimensions } from './vocabulary.ts'

/** One column of the table as its head shows it. */
export interface HeadedColumn {
  readonly heading: string
  /** Text in the row of units, "" without. */
  readonly unitBelow: string
}

/** A column with what was made of it; `unit` converts it to SI, undefined for a plain number. */
export interface SensedColumn {
  readonly number: number
  readonly heading: string
  readonly sense: ColumnSense
  readonly source: ColumnSource
}

/** Who answers: options of this call before a mapping that was kept. */
export interface AnswerBook {
  readonly source: 'option' | 'mapping'
  readonly answers: ColumnAnswers
}

/** Reads every heading, with what a person said about it. Also gives the keys that speak of no column. */
export function senseColumns(
  columns: readonly HeadedColumn[],
  books: readonly AnswerBook[],
): { readonly sensed: SensedColumn[]; readonly unused: { readonly key: string; readonly source: ColumnSource }[] } {
  const used = new Set<string>()
  const sensed = columns.map(({ heading, unitBelow }, index): SensedColumn => {
    const number = index + 1
    const named = { number, heading, words: headingParts(heading, unitBelow).map(({ words }) => words) }
    for (const { source, answers } of books) {
      const key = keyOfColumn(Object.keys(answers), named)
      if (key === undefined) continue
      used.add(`${source} ${key}`)
      return { number, heading, source, sense: answeredSense({ heading, unitBelow }, answers[key], source) }
    }
    return { number, heading, source: 'guess', sense: senseOf(heading, unitBelow) }
  })
  const unused = books.flatMap(({ source, answers }) =>
    Object.keys(answers)
      .filter((key) => !used.has(`${source} ${key}`))
      .map((key) => ({ key, source })),
  )
  return { sensed, unused }
}

/** What a heading means once a person has spoken. */
function answeredSense(column: HeadedColumn, answer: ColumnAnswer, source: 'option' | 'mapping'): ColumnSense {
  const said = source === 'option' ? 'an option says so' : 'the kept mapping says so'
  if (answer.channel === null) return { kind: 'aside', unitText: '', reason: `${said}.` }
  const guessed = answer.unit === undefined ? senseOf(column.heading, column.unitBelow) : withUnit(column, answer.unit)
  const channel = answer.channel ?? channelOf(guessed)
  if (channel === undefined) return guessed
  if (channel === 'step') {
    return { kind: 'fits', channel, unit: undefined, second: false, unitText: '', reason: `${said}.` }
  }
  const unitText = answer.unit ?? (guessed.unitText || column.unitBelow.trim())
  if (guessed.kind === 'fits' && guessed.channel === channel) return { ...guessed, second: false, reason: `${said}.` }
  if (unitText === '') {
    return { kind: 'unitMissing', channels: [channel], unitText, reason: `${said}, but no unit is written.` }
  }
  const readings = unitsOf(unitText)
  const unit = readings.find(({ dimension }) => dimension === channelDimensions[channel])
  if (unit !== undefined) return { kind: 'fits', channel, unit, second: false, unitText, reason: `${said}.` }
  const kind = readings.length === 0 ? 'unitUnknown' : 'unitUnfit'
  return {
    kind,
    channels: [channel],
    unitText,
    reason: `${said}, but "${unitText}" is no unit of ${plainNames[channel]}.`,
  }
}

/** The sense of the heading's words with another unit. */
function withUnit(column: HeadedColumn, unit: string): ColumnSense {
  const senses = headingParts(column.heading, column.unitBelow).map(({ words }) => senseOf(words, unit))
  return senses.find(({ kind }) => kind === 'fits') ?? senses.find(({ kind }) => kind !== 'aside') ?? senses[0]
}

function channelOf(sense: ColumnSense): ChannelName | undefined {
  if (sense.kind === 'fits') return sense.channel
  return 'channels' in sense && sense.channels.length === 1 ? sense.channels[0] : undefined
}

/** Columns of the table weighed against each other: what each holds, and what has to be asked. */
export interface Recognised {
  readonly guesses: readonly ColumnGuess[]
  /** Converts each channel to SI; undefined for a plain number, or where the unit is still asked for. */
  readonly units: Readonly<Partial<Record<ChannelName, Unit>>>
  readonly questions: readonly ColumnQuestion[]
}

/** Something about a column that only a person can say. */
export type ColumnQuestion =
  | { readonly kind: 'columnTwice'; readonly channel: ChannelName; readonly columns: readonly SensedColumn[] }
  | {
      readonly kind: 'unitMissing' | 'unitUnknown' | 'unitUnfit' | 'unitUnclear'
      readonly column: SensedColumn
      readonly channels: readonly ChannelName[]
      readonly unitText: string
      readonly nearest: string | undefined
    }

export function recognise(sensed: readonly SensedColumn[]): Recognised {
  const held = new Map<ChannelName, SensedColumn>()
  const units: Partial<Record<ChannelName, Unit>> = {}
  const why = new Map<number, string>()
  const questions: ColumnQuestion[] = []
  const hold = (channel: ChannelName, column: SensedColumn, unit: Unit | undefined): void => {
    held.set(channel, column)
    if (unit !== undefined) units[channel] = unit
  }
  for (const [channel, columns] of rivals(sensed)) {
    const main = columns.filter(({ sense }) => sense.kind === 'fits' && !sense.second)
    const chosen = main.length > 0 ? main : columns
    const spoken = chosen.filter(({ source }) => source !== 'guess')
    const winners = spoken.length === 1 ? spoken : chosen
    if (winners.length > 1) questions.push({ kind: 'columnTwice', channel, columns: winners })
    const [first] = winners
    hold(channel, first, first.sense.kind === 'fits' ? first.sense.unit : undefined)
    for (const other of columns) {
      if (other !== first) why.set(other.number, `left aside: "${first.heading}" holds ${plainNames[channel]}.`)
    }
  }
  for (const { channel, column, unit } of byUnitAlone(sensed, held)) {
    hold(channel, column, unit)
    why.set(column.number, `no word names it, but it alone has a unit of ${plainNames[channel]}.`)
  }
  for (const column of sensed) {
    const question = questionOf(column, held)
    if (question === undefined) continue
    questions.push(question)
    // Its numbers are read all the same, so that all that is wrong with them is said in one go.
    const [channel] = question.channels
    if (!held.has(channel)) hold(channel, column, undefined)
  }
  const holders = new Map([...held].map(([channel, column]) => [column.number, channel]))
  const guesses = sensed.map((column): ColumnGuess => {
    const { number, heading, sense, source } = column
    const channel = holders.get(number) ?? null
    return { column: number, heading, unit: sense.unitText, channel, source, reason: why.get(number) ?? sense.reason }
  })
  return { guesses, units, questions }
}

function rivals(sensed: readonly SensedColumn[]): Map<ChannelName, SensedColumn[]> {
  const found = new Map<ChannelName, SensedColumn[]>()
  for (const column of sensed) {
    if (column.sense.kind !== 'fits') continue
    found.set(column.sense.channel, [...(found.get(column.sense.channel) ?? []), column])
  }
  return found
}

/** Channels whose unit belongs to no other channel. */
const toldByUnit: readonly ChannelName[] = ['time', 'torque', 'angularVelocity', 'temperature']

function byUnitAlone(
  sensed: readonly SensedColumn[],
  held: ReadonlyMap<ChannelName, SensedColumn>,
): { readonly channel: ChannelName; readonly column: SensedColumn; readonly unit: Unit }[] {
  return toldByUnit
    .filter((channel) => !held.has(channel))
    .flatMap((channel) => {
      const fitting = sensed.flatMap((column) => {
        if (column.sense.kind !== 'unitOnly') return []
        const units = column.sense.readings.filter(({ dimension }) => dimension === channelDimensions[channel])
        return units.length === 1 ? [{ channel, column, unit: units[0] }] : []
      })
      return fitting.length === 1 ? fitting : []
    })
}

function questionOf(
  column: SensedColumn,
  held: ReadonlyMap<ChannelName, SensedColumn>,
): Exclude<ColumnQuestion, { kind: 'columnTwice' }> | undefined {
  const { sense, source } = column
  if (!('channels' in sense)) return undefined
  const free = sense.channels.filter((channel) => !held.has(channel))
  if (free.length === 0 || (sense.kind === 'unitUnfit' && source === 'guess' && isHarmless(sense, free)))
    return undefined
  const nearest = sense.unitText === '' ? undefined : nearestUnit(sense.unitText, channelDimensions[free[0]])
  return { kind: sense.kind, column, channels: free, unitText: sense.unitText, nearest }
}

/** A plain number or a length called "position" is another column, not a mistake. */
function isHarmless(sense: ColumnSense, channels: readonly ChannelName[]): boolean {
  const plain = unitsOf(sense.unitText).some(({ dimension }) => dimension === 'ratio' || dimension === 'count')
  return plain || channels.every((channel) => channel === 'step' || channel === 'angle' || channel === 'gap')
}
