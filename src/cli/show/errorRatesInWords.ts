import { type ErrorRateStudy, isKept, type RateRow } from '../../bench/errorRates/index.ts'
import { textTable } from './textTable.ts'

const headings: Readonly<Record<RateRow['table'], string>> = {
  band: 'The 95 % band for the difference holds the truth at all speeds at once. Replicates differ:',
  falseAlarm: '"Differs" is said of equal samples. Replicates differ:',
  same: '"The same within 10 %" is said of samples that differ by 10 %',
  power: 'What a plan promises at a scatter of 5 % is there',
  scatter: 'Scatter and ranking',
  unlike: 'Where the assumptions do not hold, the band holds the truth; told, not promised',
}

/** The tables of a study of error rates. */
export function errorRatesInWords({ draws, seed, rows }: ErrorRateStudy): string {
  const tables = [...new Set(rows.map(({ table }) => table))].map(
    (table) => `${headings[table]}\n\n${tableOf(rows.filter((row) => row.table === table))}`,
  )
  return `${draws} comparisons for each row, seed ${seed}.\n\n${tables.join('\n\n')}\n`
}

function tableOf(rows: readonly RateRow[]): string {
  const percent = (share: number): string => (100 * share).toFixed(1)
  const promise = ({ least, most }: RateRow): string => {
    if (least <= 0 && most >= 1) return ''
    return least <= 0 ? `up to ${percent(most)}` : `${percent(least)} to ${percent(most)}`
  }
  return textTable([
    { head: '', unit: '', align: 'left', cells: rows.map(({ row }) => row) },
    { head: 'replicates', unit: '', align: 'right', cells: rows.map(({ replicates }) => replicates) },
    { head: 'seen', unit: '%', align: 'right', cells: rows.map(({ share }) => percent(share)) },
    { head: '±', unit: '%', align: 'right', cells: rows.map(({ standardError }) => percent(standardError)) },
    { head: 'promised', unit: '%', align: 'right', cells: rows.map(promise) },
    { head: 'kept', unit: '', align: 'left', cells: rows.map((row) => (isKept(row) ? 'yes' : 'NO')) },
  ])
}
