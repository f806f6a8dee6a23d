import type { Metre } from '../../terms/index.ts'

/** A rise from 0 to 1 that begins at `onset` and takes `width`. */
export interface Ramp {
  readonly onset: Metre
  readonly width: Metre
}

/** Its height at a place. */
export const rampAt = (place: Metre, { onset, width }: Ramp): number =>
  Math.max(0, Math.min(1, (place - onset) / width))

/** Its mean over a block around a place: exact, so that an onset inside a block has a place too. */
export function rampMean(middle: Metre, block: Metre, ramp: Ramp): number {
  return (areaTo(middle + block / 2, ramp) - areaTo(middle - block / 2, ramp)) / block
}

function areaTo(place: Metre, { onset, width }: Ramp): number {
  const into = place - onset
  if (into <= 0) return 0
  return into <= width ? (into * into) / (2 * width) : into - width / 2
}
