/** A logarithmic axis of a small plot. */
export interface PlotScale {
  /** Place on the axis, 0 to 1. */
  readonly share: (value: number) => number
  readonly ticks: readonly number[]
}

/** Axis over the positive ones of the values, with round ticks inside it; undefined where there are none. */
export function plotScale(values: readonly number[]): PlotScale | undefined {
  const positive = values.filter((value) => value > 0 && Number.isFinite(value))
  if (positive.length === 0) return undefined
  const least = Math.min(...positive)
  const most = Math.max(...positive)
  // A level line stands in the middle of an axis that reaches a tenth up and down.
  const [low, high] = most / least > 1.0001 ? [least, most] : [least / 1.1, most * 1.1]
  const share = (value: number): number => Math.min(1, Math.max(0, Math.log(value / low) / Math.log(high / low)))
  return { share, ticks: roundTicks(low, high) }
}

const sets = [[1], [1, 2, 5], [1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9]] as const

/** The sparsest round values of which at least three lie inside; evenly spaced ones on a short axis. */
function roundTicks(low: number, high: number): readonly number[] {
  for (const set of sets) {
    const inside: number[] = []
    for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++) {
      for (const mantissa of set) inside.push(Number(`${mantissa}e${power}`))
    }
    const ticks = inside.filter((value) => value >= low * 0.999999 && value <= high * 1.000001)
    if (ticks.length >= 3) return ticks
  }
  return evenTicks(low, high)
}

function evenTicks(low: number, high: number): readonly number[] {
  const power = Math.floor(Math.log10((high - low) / 3))
  const step = [1, 2, 5, 10].find((factor) => (high - low) / (factor * 10 ** power) <= 6) ?? 10
  const ticks: number[] = []
  for (let count = Math.ceil(low / (step * 10 ** power)); ; count++) {
    const tick = Number(`${count * step}e${power}`)
    if (tick > high || ticks.length > 12) return ticks
    ticks.push(tick)
  }
}
