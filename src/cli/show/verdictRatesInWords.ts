import type { VerdictRates } from '../../bench/decide/rates/index.ts'
import { textTable } from './textTable.ts'

/** The tables of a study of verdicts. */
export function verdictRatesInWords({ draws, seed, limits, watches, scatter }: VerdictRates): string {
  const percent = (share: number): string => (100 * share).toFixed(2)
  const verdicts = textTable([
    { head: 'rule', unit: '', align: 'left', cells: limits.map(({ rule }) => rule) },
    {
      head: 'mountings',
      unit: '',
      align: 'left',
      cells: limits.map(({ replicates }) => (Number.isFinite(replicates) ? String(replicates) : 'u known')),
    },
    { head: 'speeds', unit: '', align: 'right', cells: limits.map(({ speeds }) => String(speeds)) },
    { head: 'alike', unit: 'ρ', align: 'right', cells: limits.map(({ correlation }) => String(correlation)) },
    { head: 'wrong pass', unit: '%', align: 'right', cells: limits.map(({ wrongPass }) => percent(wrongPass)) },
    { head: 'wrong fail', unit: '%', align: 'right', cells: limits.map(({ wrongFail }) => percent(wrongFail)) },
    { head: 'promised', unit: '%', align: 'right', cells: limits.map(({ promised }) => `≤ ${percent(promised)}`) },
  ])
  const silent = textTable([
    { head: 'watch', unit: '', align: 'left', cells: watches.map(({ rules }) => rules) },
    {
      head: 'limits from',
      unit: 'values',
      align: 'right',
      cells: watches.map(({ baseline }) => (baseline === null ? 'known' : String(baseline))),
    },
    { head: 'shift', unit: 'σ', align: 'right', cells: watches.map(({ shift }) => String(shift)) },
    { head: 'first alarm, mean', unit: 'values', align: 'right', cells: watches.map(({ mean }) => mean.toFixed(1)) },
    { head: '±', unit: '', align: 'right', cells: watches.map(({ standardError }) => standardError.toFixed(1)) },
    { head: 'median', unit: 'values', align: 'right', cells: watches.map(({ median }) => String(median)) },
  ])
  const intervals = textTable([
    { head: 'samples', unit: '', align: 'right', cells: scatter.map(({ samples }) => String(samples)) },
    { head: 'days', unit: '', align: 'right', cells: scatter.map(({ days }) => String(days)) },
    { head: 'mountings', unit: 'a day', align: 'right', cells: scatter.map(({ mountings }) => String(mountings)) },
    { head: 'day over mounting', unit: '', align: 'right', cells: scatter.map((row) => String(row.dayOverMounting)) },
    { head: '95 % interval of the SD between', unit: '', align: 'left', cells: scatter.map(({ what }) => what) },
    { head: 'holds the truth', unit: '%', align: 'right', cells: scatter.map(({ holds }) => (100 * holds).toFixed(1)) },
    {
      head: '±',
      unit: '%',
      align: 'right',
      cells: scatter.map(({ standardError }) => (100 * standardError).toFixed(1)),
    },
  ])
  return `Verdicts where the truth lies right on the limit; ${draws} draws a row, seed ${seed}.\n\n${verdicts}\n\nHow long a watch stays silent.\n\n${silent}\n\nHow often the interval of a standard deviation holds the truth.\n\n${intervals}\n`
}
