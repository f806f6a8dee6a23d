import type { HeldSystems } from '../../bench/decide/comparable/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const verdicts = {
  comparable: 'They may be held against each other.',
  withCare: 'They may be held against each other with care.',
  refused: 'They must not be held against each other.',
} as const

const weights = {
  refuses: 'Why not:',
  shifts: 'What may shift the difference:',
  notStated: 'What nobody wrote down:',
  asked: 'What is compared:',
} as const

/** The verdict with its reasons, and the numbers where they may be held. */
export function comparableInWords(found: HeldSystems, screen: Screen): string {
  const { first, second, verdict, differences, numbers } = found
  const width = Math.min(screen.width, 100)
  const head = painted(screen, `${printable(first)} and ${printable(second)}`, 'strong')
  const said = painted(screen, verdicts[verdict], verdict === 'refused' ? 'warn' : 'accent')
  const reasons = (['refuses', 'shifts', 'notStated', 'asked'] as const).flatMap((weight) => {
    const alike = differences.filter((difference) => difference.weight === weight)
    if (alike.length === 0) return []
    const lines = alike.map(({ what, first: a, second: b, sentence }) => {
      const sides = a === '' && b === '' ? '' : ` ${printable(a)} | ${printable(b)}.`
      return wrap(`${what}:${sides} ${sentence}`, width, { indent: '    ' }).replace(/^ {4}/, '  - ')
    })
    return [`\n${weights[weight]}\n${lines.join('\n')}\n`]
  })
  return `${head}\n${said}\n${reasons.join('')}${alarmLines(found, width)}${numbers.length === 0 ? '' : numberLines(found, width)}`
}

function alarmLines({ openAlarms }: HeldSystems, width: number): string {
  if (openAlarms.length === 0) return ''
  const lines = openAlarms
    .slice(0, 6)
    .map((alarm) => wrap(printable(alarm), width, { indent: '    ' }).replace(/^ {4}/, '  - '))
  const more = openAlarms.length > 6 ? `  and ${openAlarms.length - 6} more\n` : ''
  return `\nOpen alarms of the rig watch:\n${lines.join('\n')}\n${more}`
}

function numberLines({ numbers, sameRig, sameFixture, repeatability }: HeldSystems, width: number): string {
  const percent = (share: number): string => (100 * share).toFixed(1)
  const table = textTable([
    {
      head: 'speed',
      unit: 'mm/s',
      align: 'point',
      cells: numbers.map(({ slidingSpeed }) => String(Number((1000 * slidingSpeed).toPrecision(4)))),
    },
    { head: 'first', unit: '', align: 'point', cells: numbers.map((one) => one.first.toPrecision(4)) },
    { head: 'second', unit: '', align: 'point', cells: numbers.map((one) => one.second.toPrecision(4)) },
    { head: 'difference', unit: '%', align: 'point', cells: numbers.map(({ difference }) => percent(difference)) },
    { head: '95 % from', unit: '%', align: 'point', cells: numbers.map(({ low }) => percent(low)) },
    { head: 'to', unit: '%', align: 'point', cells: numbers.map(({ high }) => percent(high)) },
    ...(repeatability === null
      ? []
      : [{ head: 'E_n', unit: '', align: 'point' as const, cells: numbers.map(({ en }) => en.toFixed(2)) }]),
  ])
  const beyond = numbers.filter(({ en }) => en > 1).length
  const notes = [
    sameRig && sameFixture
      ? 'One rig and one fixture: what they share has cancelled.'
      : 'Scales, zeroes and levers of both count, as they are not the same.',
    repeatability === null
      ? 'Scatter between mountings is not in these intervals, as nobody knows it, so they do not say whether the two differ: give it with --repeatability, or compare replicates with "kufe compare".'
      : `Scatter between mountings counts with ${printQuantity(repeatability, 'ratio', { digits: 2, unit: '%' })}.`,
    repeatability === null
      ? ''
      : `E_n over 1 says that the numbers disagree (ISO 13528): at ${beyond} of ${numbers.length} speeds.`,
  ]
  return `\nThe second against the first\n${table}\n${wrap(notes.join(' '), width, { indent: '  ' })}\n`
}
