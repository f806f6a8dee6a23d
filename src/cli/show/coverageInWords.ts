import type { CoverageStudy } from '../../bench/index.ts'
import { textTable } from './textTable.ts'

/** The table of a coverage study. */
export function coverageInWords({ of, curves, seed, rows }: CoverageStudy): string {
  const percent = (share: number): string => (100 * share).toFixed(1)
  const table = textTable([
    { head: '95 % interval of', unit: '', align: 'left', cells: rows.map(({ group }) => group) },
    { head: 'holds the truth', unit: '%', align: 'right', cells: rows.map(({ share }) => percent(share)) },
    { head: '±', unit: '%', align: 'right', cells: rows.map(({ standardError }) => percent(standardError)) },
    { head: 'intervals', unit: '', align: 'right', cells: rows.map(({ of }) => String(of)) },
    { head: 'open or none', unit: '', align: 'right', cells: rows.map(({ notGiven }) => String(notGiven)) },
  ])
  return `${curves} simulated ${of === 'curves' ? 'curves' : `records (${of})`}, seed ${seed}. Nominal 95 %; 93 to 97 % is honest.\n\n${table}\n`
}
