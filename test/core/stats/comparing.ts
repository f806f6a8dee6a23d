import { readFileSync } from 'node:fs'

interface Comparing {
  readonly grubbs: { readonly values: readonly number[] }
  readonly rosner: { readonly values: readonly number[] }
  readonly welch: {
    readonly pairs: readonly {
      readonly a: readonly number[]
      readonly b: readonly number[]
      readonly t: number
      readonly df: number
      readonly p: number
    }[]
  }
  readonly sleep: {
    readonly a: readonly number[]
    readonly b: readonly number[]
    readonly welch: { readonly t: number; readonly df: number; readonly p: number }
    readonly paired: { readonly t: number; readonly df: number; readonly p: number }
  }
  readonly creosote: { readonly data: readonly (readonly (readonly [number, number])[])[] }
}

/** Published data for tests of samples against each other; each set names its source. */
export const comparing: Comparing = JSON.parse(
  readFileSync(new URL('../../data/stats/comparing.json', import.meta.url), 'utf8'),
)
