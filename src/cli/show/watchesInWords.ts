import type { RigWatch } from '../../bench/decide/watch/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { leftInWords } from './leftInWords.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

type Series = NonNullable<RigWatch['series']>

/** Check standards with their limits, alarms and drift. */
export const watchesInWords = (watches: readonly RigWatch[], screen: Screen): string =>
  watches.map((watch) => watchInWords(watch, screen)).join('\n')

function watchInWords({ watch, title, values, series, alarms, left }: RigWatch, screen: Screen): string {
  const head = painted(screen, `${printable(title)} at ${printQuantity(watch.at, 'velocity', { digits: 3 })}`, 'strong')
  if (series === null) {
    return `${head}: ${values} of 5 values that a chart needs at least.\n${leftInWords(left)}`
  }
  const { chart } = series
  const few =
    chart.baseline < 20
      ? ` Limits from ${chart.baseline} values are rough: with limits from ten, half of all watches give a false alarm within 26 values, with well-known limits within 63.`
      : ''
  const limits = `${values} values; centre ${four(chart.centre)}, limits ${four(chart.lower)} and ${four(chart.upper)} (± 3 × ${two(chart.deviation)}) from the first ${chart.baseline}; moving range at most ${two(chart.rangeUpper)}.${few}`
  const width = Math.min(screen.width, 100)
  return `${head}\n${wrap(limits, width, { indent: '  ' })}\n\n${alarmLines(alarms, screen)}${driftLines(series, width)}${leftInWords(left)}`
}

const four = (value: number): string => String(Number(value.toPrecision(4)))
const two = (value: number): string => String(Number(value.toPrecision(2)))

function alarmLines(alarms: RigWatch['alarms'], screen: Screen): string {
  if (alarms.length === 0) return '  No alarms.\n'
  const open = alarms.filter(({ answer }) => answer === null).length
  const lines = alarms.map(({ id, label, words, answer }) => {
    const said =
      answer === null
        ? painted(screen, 'open', 'warn')
        : `answered on ${answer.on} by ${printable(answer.by)}: ${printable(answer.text)}`
    return `    ${label}  ${words}; ${said}\n                ${painted(screen, id, 'quiet')}\n`
  })
  return `  ${alarms.length} ${alarms.length === 1 ? 'alarm' : 'alarms'}, ${open} open:\n${lines.join('')}`
}

function driftLines({ drift, chart }: Series, width: number): string {
  if (drift === null) return ''
  const percent = (value: number): string => `${((100 * value) / chart.centre).toFixed(2)}`
  const rows = drift.effects.map(({ cause, kind, against, value, low, high }) => ({
    cause:
      kind === ''
        ? `${cause}, per ${cause === 'day' ? 'day' : 'K'}`
        : `${cause} ${printable(kind)} against ${printable(against)}`,
    cells: [percent(value), percent(low), percent(high)],
    p: drift.tests.find((test) => test.cause === cause)?.adjusted ?? 1,
  }))
  const untold = drift.untold.map(
    ({ cause, why }) => `${cause} (${why === 'neverVaries' ? 'always the same' : 'changes only together with others'})`,
  )
  const table = textTable([
    { head: 'what moves the rig', unit: '', align: 'left', cells: rows.map(({ cause }) => cause) },
    ...['by', '95 % from', 'to'].map((head, i) => ({
      head,
      unit: '%',
      align: 'point' as const,
      cells: rows.map(({ cells }) => cells[i]),
    })),
    {
      head: 'p (Holm)',
      unit: '',
      align: 'right',
      cells: rows.map(({ p }) => (p < 0.0001 ? '< 0.0001' : p.toFixed(4))),
    },
  ])
  const told = rows.length === 0 ? '' : `\n${table}\n`
  const rest =
    untold.length === 0 ? '' : `${wrap(`Nothing can be said about ${untold.join(', ')}.`, width, { indent: '  ' })}\n`
  return `${told}${rest}  Together they explain ${(100 * drift.explained).toFixed(0)} % of the scatter.\n`
}
