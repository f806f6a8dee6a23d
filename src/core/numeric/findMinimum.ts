/** A minimum within a range, and why the search stopped. */
export interface Minimum {
  readonly at: number
  readonly value: number
  readonly evaluations: number
  /** `atEnd`: the function still falls towards an end of the range. */
  readonly end: 'inside' | 'atEnd'
}

const golden = (Math.sqrt(5) - 1) / 2

/**
 * Minimum of a function with a single dip between `low` and `high` by golden sections (Kiefer 1953). The place is known to about
 * √ε of its size at best, as a parabola is flat that far; `tolerance` is absolute. Of several dips it finds one.
 */
export function findMinimum(
  f: (x: number) => number,
  [low, high]: readonly [low: number, high: number],
  { tolerance = 1e-8 * (high - low) }: { readonly tolerance?: number } = {},
): Minimum {
  if (!(low < high && Number.isFinite(high - low))) throw new RangeError(`range must rise, got ${low} to ${high}`)
  if (!(tolerance > 0)) throw new RangeError(`tolerance must be above zero, got ${tolerance}`)
  // Finer than rounding of the ends the sections would never end.
  const finest = Math.max(tolerance, 4 * Number.EPSILON * Math.max(Math.abs(low), Math.abs(high)))
  let a = low
  let b = high
  let left = b - golden * (b - a)
  let right = a + golden * (b - a)
  let atLeft = f(left)
  let atRight = f(right)
  let evaluations = 2
  while (b - a > finest) {
    if (atLeft < atRight) {
      b = right
      right = left
      atRight = atLeft
      left = b - golden * (b - a)
      atLeft = f(left)
    } else {
      a = left
      left = right
      atLeft = atRight
      right = a + golden * (b - a)
      atRight = f(right)
    }
    evaluations++
  }
  const at = atLeft < atRight ? left : right
  return { at, value: Math.min(atLeft, atRight), evaluations, end: a === low || b === high ? 'atEnd' : 'inside' }
}
