import { readFileSync } from 'node:fs'

interface PublishedCharts {
  readonly individuals: number[]
  readonly ewma: number[]
  readonly cusum: number[]
  readonly glucose: { readonly data: Readonly<Record<'A' | 'B' | 'C' | 'D' | 'E', number[][]>> }
  /** Levels, laboratories, results. */
  readonly creosote: { readonly data: number[][][] }
}

/** NIST/SEMATECH e-Handbook 6.3.2 (public domain), ASTM E691's and ISO 5725-2's examples. */
export const published: PublishedCharts = JSON.parse(
  readFileSync(new URL('../../../data/stats/rounds-and-charts.json', import.meta.url), 'utf8'),
)
