/** Sums of what lies beyond an allowance on either side of a target. */
export interface CusumPoint {
  readonly high: number
  readonly low: number
  readonly alarm: boolean
}

/** Target, allowance k and decision interval h in the unit of the values. */
export interface CusumSetting {
  readonly target: number
  readonly allowance: number
  readonly decision: number
}

/** Tabular cumulative sums (Page 1954; NIST/SEMATECH e-Handbook 6.3.2.3): an alarm where one of them passes the decision interval. */
export function cusumChart(
  values: readonly number[],
  { target, allowance, decision }: CusumSetting,
): readonly CusumPoint[] {
  if (!(allowance >= 0 && decision > 0)) {
    throw new RangeError(`allowance must be zero or more and decision above it, got ${allowance} and ${decision}`)
  }
  let high = 0
  let low = 0
  return values.map((value) => {
    high = Math.max(0, high + value - target - allowance)
    low = Math.max(0, low + target - value - allowance)
    return { high, low, alarm: high > decision || low > decision }
  })
}
