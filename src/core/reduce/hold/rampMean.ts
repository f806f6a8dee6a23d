import type { Metre } from '../../terms/index.ts'

/** A rise from 0 to 1 that begins at `onset` and takes `width`. */
export interface Ramp {
  readonly onset: Metre
  readonly width: Metre
}

/** Its height at a place. */
export const rampAt = (place: Metre, { onset, width }: Ramp): number =>
  Math.max(0, Math.min(1, (place - onset) / width))

/** Its mean over the rows of a block, which lie evenly around the middle: exact, so that an onset inside a block has a place too. */
export function rampMean(
  middle: Metre,
  { rows, spacing }: { readonly rows: number; readonly spacing: Metre },
  ramp: Ramp,
): number {
  let sum = 0
  for (let k = 0; k < rows; k++) sum += rampAt(middle + (k - (rows - 1) / 2) * spacing, ramp)
  return sum / rows
}
