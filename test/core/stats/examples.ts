import { readFileSync } from 'node:fs'

interface Examples {
  readonly gumH2: { readonly V: number[]; readonly I_mA: number[]; readonly phi: number[] }
  readonly gum443: { readonly values: number[] }
  readonly sen: { readonly x: number[]; readonly y: number[] }
  readonly kendall: { readonly x: number[]; readonly y: number[] }
  readonly mannKendall: {
    readonly values: {
      readonly y: number[]
      readonly S: number
      readonly variance: number
      readonly z: number
      readonly p: number
    }[]
  }
  readonly lombScargle: {
    readonly t: number[]
    readonly y: number[]
    readonly f: number[]
    readonly P: number[]
    readonly normalised: number[]
  }
  readonly hampel: { readonly x: number[]; readonly halfWindow: number; readonly threshold: number }
  readonly leadKeyComparison: { readonly value: number[]; readonly u: number[] }
}

/** Published or independently computed examples; each names its source in the file. */
export const examples: Examples = JSON.parse(
  readFileSync(new URL('../../data/stats/examples.json', import.meta.url), 'utf8'),
)
