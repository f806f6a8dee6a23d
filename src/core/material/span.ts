/** From `low` to `high`, both included. */
export interface Span {
  readonly low: number
  readonly high: number
}

/** A unit turned into SI misses the end of a table by a rounding (10 mm²/s is 9.999999999999999e-6 m²/s); it still counts as inside. */
const slack = 1e-12

/** Whether a value lies in the span, but for roundings of its ends; NaN does not. */
export const within = (value: number, { low, high }: Span): boolean =>
  value >= low - slack * Math.abs(low) && value <= high + slack * Math.abs(high)
