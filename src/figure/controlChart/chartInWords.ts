import { shortNumber } from '../panel.ts'
import type { ControlChartData } from './controlChartData.ts'

/** The chart in words, for people who hear it. */
export function chartInWords(data: ControlChartData): string {
  const { values, centre, lower, upper, baseline, alarms, quantity } = data
  const newest = values.at(-1)
  const open = alarms.filter(({ state }) => state === 'open')
  return [
    `Control chart of ${quantity}, ${values.length} values; centre ${shortNumber(centre)}, limits ${shortNumber(lower)} and ${shortNumber(upper)} from the first ${baseline}.`,
    newest === undefined ? '' : `The last one, ${newest.label}, is ${shortNumber(newest.value)}.`,
    alarms.length === 0 ? 'No alarms.' : `${alarms.length} alarms, ${open.length} of them open.`,
    ...alarms.map(({ at, words, state }) => `${values[at].label}: ${words}, ${state}.`),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}
