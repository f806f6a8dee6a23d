import { studentTQuantile } from '../../stats/index.ts'

/** A linear fit with the parameters that enter non-linearly held at one place. */
export interface HeldFit {
  /** Where those parameters are held. */
  readonly at: readonly number[]
  /** Sum of squares left over. */
  readonly squares: number
  readonly coefficients: Float64Array
  /** Covariance of the coefficients for unit variance, row-major. */
  readonly gram: Float64Array
}

/** A value with a 95 % interval; an end is null where the data do not bound it within what was tried. */
export interface Bounds {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
}

/** A linear combination of the coefficients, which may depend on the held parameters. */
export type Combination = (at: readonly number[]) => ArrayLike<number>

/**
 * Profile of a model that is linear but for one or two parameters: all that it can say about a quantity follows from linear
 * fits with those held at many places (Golub & Pereyra 1973). A value belongs to the interval where the sum of squares,
 * smallest over everything else, rises by no more than t² times the variance (Bates & Watts 1988, section 6.1).
 */
export class SeparableProfile {
  readonly best: HeldFit
  readonly variance: number
  readonly #fits: readonly HeldFit[]
  readonly #freedom: readonly [number, number]
  #rise: number

  /**
   * @param freedom degrees of freedom of the variance, and of Student's t where `effective` is not given
   * @param effective degrees of freedom of Student's t
   */
  constructor(fits: readonly HeldFit[], freedom: number, effective = freedom) {
    const sound = fits.filter(({ squares }) => Number.isFinite(squares))
    if (sound.length === 0) throw new RangeError('a profile needs at least one fit')
    if (!(freedom > 0 && effective > 0))
      throw new RangeError(`freedom must be above zero, got ${freedom}, ${effective}`)
    this.best = sound.reduce((best, fit) => (fit.squares < best.squares ? fit : best))
    this.variance = this.best.squares / freedom
    this.#rise = this.variance * studentTQuantile(0.975, effective) ** 2
    this.#fits = sound
    this.#freedom = [freedom, effective]
  }

  /** The same with a variance that is `factor` times as large, for a quantity that hangs on noisier rows than most. */
  widened(factor: number): SeparableProfile {
    if (!(factor >= 1)) throw new RangeError(`factor must be 1 or more, got ${factor}`)
    const [freedom, effective] = this.#freedom
    const wide = new SeparableProfile(this.#fits, freedom, effective)
    wide.#rise = this.#rise * factor
    return wide
  }

  /** Room that a fit leaves below the limit; below zero where it is refused. */
  #room(fit: HeldFit): number {
    return this.best.squares + this.#rise - fit.squares
  }

  /** Interval of a held parameter, its ends put between neighbours where the limit is crossed. */
  held(which: number): Bounds {
    const least = this.#leastBy(which)
    const inside = least.findIndex(({ at }) => at === this.best.at[which])
    const end = (way: 1 | -1): number | null => {
      let i = inside
      let last = inside
      // The profile may dip again further out: the interval reaches to the farthest place that is accepted.
      for (i = inside; i >= 0 && i < least.length; i += way) if (this.#room(least[i].fit) >= 0) last = i
      const next = least[last + way]
      if (next === undefined) return null
      const [a, b] = [this.#room(least[last].fit), this.#room(next.fit)]
      return least[last].at + ((next.at - least[last].at) * a) / (a - b)
    }
    return { value: this.best.at[which], low: end(-1), high: end(1) }
  }

  #leastBy(which: number): { at: number; fit: HeldFit }[] {
    const least = new Map<number, HeldFit>()
    for (const fit of this.#fits) {
      const before = least.get(fit.at[which])
      if (before === undefined || fit.squares < before.squares) least.set(fit.at[which], fit)
    }
    return [...least].map(([at, fit]) => ({ at, fit })).sort((a, b) => a.at - b.at)
  }

  /** Interval of a linear combination of the coefficients: the union over all places that leave room. */
  combination(of: Combination): Bounds {
    let low = Number.POSITIVE_INFINITY
    let high = Number.NEGATIVE_INFINITY
    for (const fit of this.#fits) {
      const room = this.#room(fit)
      if (room < 0) continue
      const { value, unit } = combined(fit, of(fit.at))
      const reach = Math.sqrt(room * unit)
      low = Math.min(low, value - reach)
      high = Math.max(high, value + reach)
    }
    return { value: combined(this.best, of(this.best.at)).value, low, high }
  }

  /**
   * Whether the data allow a linear combination to be `target` somewhere. Asked along a grid this gives the interval of
   * whatever is defined by an equation.
   */
  allows(of: Combination, target = 0): boolean {
    return this.#fits.some((fit) => {
      const room = this.#room(fit)
      if (room < 0) return false
      const { value, unit } = combined(fit, of(fit.at))
      return (value - target) ** 2 <= room * unit
    })
  }

  /** Places of the held parameters that the data allow. */
  accepted(): readonly HeldFit[] {
    return this.#fits.filter((fit) => this.#room(fit) >= 0)
  }
}

/** Value of a combination and its variance for unit variance of the rows. */
function combined({ coefficients, gram }: HeldFit, weights: ArrayLike<number>): { value: number; unit: number } {
  const size = coefficients.length
  let value = 0
  let unit = 0
  for (let i = 0; i < size; i++) {
    value += weights[i] * coefficients[i]
    for (let j = 0; j < size; j++) unit += weights[i] * gram[i * size + j] * weights[j]
  }
  return { value, unit: Math.max(0, unit) }
}
