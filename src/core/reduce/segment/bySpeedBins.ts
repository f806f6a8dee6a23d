import type { Stretch } from './byStepColumn.ts'

/**
 * Cuts a continuous ramp into bins of equal width in log speed. A bin ends when the speed leaves it, so an up-and-down
 * ramp gives bins for each direction. Bins of fewer than `fewest` rows join the next one.
 *
 * @param speed angular velocity of every row, rad/s; rows at or below zero belong to the bin before them
 */
export function bySpeedBins(speed: Float64Array, binsPerDecade: number, fewest: number): Stretch[] {
  const bounds: number[] = [0]
  let current = Number.NaN
  for (let i = 0; i < speed.length; i++) {
    if (!(speed[i] > 0)) continue
    const bin = Math.floor(Math.log10(speed[i]) * binsPerDecade + 1e-9)
    if (Number.isNaN(current)) current = bin
    if (bin === current || i - bounds[bounds.length - 1] < fewest) continue
    bounds.push(i)
    current = bin
  }
  if (bounds.length > 1 && speed.length - bounds[bounds.length - 1] < fewest) bounds.pop()
  return bounds.map((from, i) => ({ number: i + 1, from, to: bounds[i + 1] ?? speed.length }))
}
