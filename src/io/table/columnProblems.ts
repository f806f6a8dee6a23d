import { nearestWord, unitsFor } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'
import { plainNames } from './columnSense.ts'
import { headingParts } from './headingParts.ts'
import { foldWords } from './headingWords.ts'
import { shown, type TableProblem, tableProblem } from './problems.ts'
import type { ColumnGuess } from './rawRecord.ts'
import type { ColumnQuestion, Recognised, SensedColumn } from './recognise.ts'
import { channelDimensions, terms } from './vocabulary.ts'

/** Where the headings stand. */
export interface HeadPlace {
  readonly file: string | undefined
  /** Line of the headings from 1, undefined without. */
  readonly line: number | undefined
}

/** What has to be asked about the columns, each with the option that answers it. */
export function questionProblem(question: ColumnQuestion, place: HeadPlace): TableProblem {
  if (question.kind === 'columnTwice') return twice(question.channel, question.columns, place)
  const { column, channels, unitText, nearest } = question
  const key = keyFor(column)
  const names = channels.map((channel) => plainNames[channel]).join(' or ')
  const dimension = channelDimensions[channels[0]]
  const example = unitsFor(dimension)[0] === '1' ? 's' : (nearest ?? asciiUnits[channels[0]])
  const aside = channels[0] === 'time' ? '' : `, or leave the column aside with --column "${key}=none"`
  const place1 = {
    ...place,
    column: column.number,
    name: shown(column.heading),
    cell: unitText === '' ? column.heading : unitText,
  }
  switch (question.kind) {
    case 'unitMissing':
      return tableProblem('unitMissing', {
        what: `Column "${shown(column.heading)}" seems to hold ${names}, but its unit is written nowhere.`,
        mend: `Say the unit with --unit "${key}=${example}" or in the setup under columns${aside}.`,
        place: place1,
      })
    case 'unitUnknown':
      return tableProblem('unitUnknown', {
        what: `"${shown(unitText)}" in the heading "${shown(column.heading)}" is no unit that is known here.`,
        mend: `${nearest === undefined ? 'Say' : `Did you mean ${nearest}? Say`} the unit with --unit "${key}=${example}" or in the setup under columns${aside}.`,
        place: place1,
      })
    case 'unitUnfit':
      return tableProblem('unitUnfit', {
        what: `Column "${shown(column.heading)}" speaks of ${names}, but "${shown(unitText)}" is no unit of it.`,
        mend: `Say the right unit with --unit "${key}=${asciiUnits[channels[0]]}"${aside}.`,
        place: place1,
      })
    case 'unitUnclear':
      return tableProblem('unitUnclear', {
        what: `"${shown(unitText)}" in the heading "${shown(column.heading)}" may mean radians or turns per second.`,
        mend: `Say which with --unit "${key}=rad/s" or --unit "${key}=rev/s", or in the setup under columns.`,
        place: place1,
      })
  }
}

/** Units that every keyboard has, for examples. */
const asciiUnits: Readonly<Record<ChannelName, string>> = {
  time: 's',
  step: '1',
  angularVelocity: 'rad/s',
  slidingSpeed: 'mm/s',
  torque: 'mN.m',
  frictionForce: 'N',
  axialForce: 'N',
  angle: 'rad',
  gap: 'mm',
  temperature: 'degC',
}

function twice(channel: ChannelName, columns: readonly SensedColumn[], place: HeadPlace): TableProblem {
  const named = columns.map(({ number, heading }) => `"${shown(heading)}" (column ${number})`)
  const same = new Set(columns.map(({ heading }) => heading)).size < columns.length
  const [first, ...others] = columns
  const key = (column: SensedColumn): string => (same ? `#${column.number}` : keyFor(column))
  return tableProblem('columnTwice', {
    what: `${named.length} columns seem to hold ${plainNames[channel]}: ${named.slice(0, 5).join(', ')}.`,
    mend: `Leave all but one aside, for example to keep "${shown(first.heading)}": ${others
      .slice(0, 4)
      .map((column) => `--column "${key(column)}=none"`)
      .join(' ')}.`,
    place: { ...place, column: others[0]?.number, name: shown(others[0]?.heading ?? ''), cell: others[0]?.heading },
  })
}

/** A short way to name a column: the words of its heading, or its number where it has none. */
function keyFor({ heading, number }: SensedColumn): string {
  const [parts] = headingParts(heading, '')
  const words = parts?.words.trim() ?? ''
  return words === '' || words.includes('"') || shown(words) !== words ? `#${number}` : words
}

/** Channels that the record must have and has not. */
export function missingProblems(
  recognised: Recognised,
  required: readonly ChannelName[] | undefined,
  place: HeadPlace,
): TableProblem[] {
  const held = new Set(recognised.guesses.map(({ channel }) => channel))
  const wanted: readonly (readonly ChannelName[])[] = required?.map((channel) => [channel]) ?? [
    ['time'],
    ['torque', 'frictionForce'],
  ]
  return wanted
    .filter((some) => !some.some((channel) => held.has(channel)))
    .map((some) => missing(some, recognised.guesses, place))
}

function missing(channels: readonly ChannelName[], guesses: readonly ColumnGuess[], place: HeadPlace): TableProblem {
  const names = channels.map((channel) => plainNames[channel]).join(' or ')
  const free = guesses.filter(({ channel, source }) => channel === null && source === 'guess')
  const near = nearestHeading(channels, free)
  const others = free.filter(({ heading }) => heading !== '').map(({ heading }) => `"${shown(heading)}"`)
  const candidates = others.length === 0 ? '' : ` Columns left aside: ${others.slice(0, 8).join(', ')}.`
  const key = near?.heading || (free[0]?.heading ?? '') || '#1'
  return tableProblem('columnMissing', {
    what: `No column was found that holds ${names}.`,
    mend:
      near === undefined
        ? `Name it with --column "${shown(key)}=${channels[0]}", or export the record again with that column.${candidates}`
        : `Did you mean "${shown(near.heading)}"? Then say so with --column "${shown(near.heading)}=${channels[0]}".`,
    place: { ...place, ...(near === undefined ? {} : { column: near.column, name: shown(near.heading) }) },
  })
}

function nearestHeading(channels: readonly ChannelName[], free: readonly ColumnGuess[]): ColumnGuess | undefined {
  const words = terms.filter(({ channel }) => channels.includes(channel)).flatMap((term) => term.words)
  return free.find(({ heading }) =>
    headingParts(heading, '').some((parts) => {
      const folded = foldWords(parts.words)
      return folded.length > 2 && folded.length <= 40 && nearestWord(folded, words) !== undefined
    }),
  )
}

/** Answers that speak of no column of the table. */
export function unusedKeyProblem(key: string, headings: readonly string[], file: string | undefined): TableProblem {
  const near = nearestWord(
    key,
    headings.filter((heading) => heading.length <= 80),
  )
  const some = headings.filter((heading) => heading !== '').slice(0, 12)
  return tableProblem('headingUnknown', {
    class: 'wrongUse',
    what: `No column is headed "${shown(key)}".`,
    mend:
      near === undefined
        ? `Use one of ${some.map((heading) => `"${shown(heading)}"`).join(', ') || 'the numbers #1, #2 …'}, or the column's number such as "#1".`
        : `Did you mean "${shown(near)}"?`,
    place: { file, name: shown(key) },
  })
}
