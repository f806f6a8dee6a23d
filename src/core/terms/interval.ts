/** A value with its 95 % interval, in the unit that its name says. */
export interface Interval {
  readonly value: number
  readonly low: number
  readonly high: number
}
