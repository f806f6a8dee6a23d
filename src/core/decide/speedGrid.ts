import type { MetrePerSecond } from '../terms/index.ts'

/** Speeds of a comparison in each decade, and fewest and most of them. */
const perDecade = 12
const fewest = 7
const most = 81

/** Speeds evenly spread in ln v from the slowest to the fastest that all have in common; one where both are the same. */
export function speedGrid(slowest: MetrePerSecond, fastest: MetrePerSecond): number[] {
  if (!(slowest > 0 && fastest >= slowest && fastest < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`speeds must rise from above zero, got ${slowest} and ${fastest} m/s`)
  }
  if (fastest === slowest) return [slowest]
  const decades = Math.log10(fastest / slowest)
  const count = Math.min(most, Math.max(fewest, 1 + Math.round(perDecade * decades)))
  return Array.from({ length: count }, (_, i) => {
    if (i === count - 1) return fastest
    return slowest * (fastest / slowest) ** (i / (count - 1))
  })
}
