/** A function that a formula may call. */
export interface KnownFunction {
  /** How many values it takes at least and at most. */
  readonly takes: readonly [least: number, most: number]
  readonly value: (...given: readonly number[]) => number
  /**
   * What it does to units: `plain` wants and gives plain numbers (angles count as such), `same` gives the unit that all of
   * its values must share, `root` gives its square root.
   */
  readonly units: 'plain' | 'same' | 'root'
}

const plain = (value: (x: number) => number): KnownFunction => ({ takes: [1, 1], value, units: 'plain' })

/** Everything that may be called in a formula. Angles are in rad. */
export const knownFunctions: Readonly<Record<string, KnownFunction>> = {
  sqrt: { takes: [1, 1], value: (x) => Math.sqrt(x), units: 'root' },
  abs: { takes: [1, 1], value: (x) => Math.abs(x), units: 'same' },
  min: { takes: [2, 20], value: (...all) => Math.min(...all), units: 'same' },
  max: { takes: [2, 20], value: (...all) => Math.max(...all), units: 'same' },
  exp: plain(Math.exp),
  ln: plain(Math.log),
  log10: plain(Math.log10),
  sin: plain(Math.sin),
  cos: plain(Math.cos),
  tan: plain(Math.tan),
  asin: plain(Math.asin),
  acos: plain(Math.acos),
  atan: plain(Math.atan),
}

/** Names that stand for a number. */
export const knownConstants: Readonly<Record<string, number>> = { pi: Math.PI, π: Math.PI }
