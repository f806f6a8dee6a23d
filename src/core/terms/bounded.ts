/** A value with its 95 % interval; an end is null where the data do not bound it. */
export interface Bounded {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
}
