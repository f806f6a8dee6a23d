/** An interval with its ends. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/** The interval that leaves as much on either side (JCGM 101:2008, 7.7.2), from trials sorted upwards. */
export function symmetricInterval(sorted: ArrayLike<number>, coverage: number): Interval {
  const { inside, outside } = places(sorted.length, coverage)
  const left = Math.floor((outside + 1) / 2)
  return { low: sorted[left], high: sorted[Math.min(sorted.length - 1, left + inside)] }
}

/** The shortest one (JCGM 101:2008, 7.7.4), from trials sorted upwards. */
export function shortestInterval(sorted: ArrayLike<number>, coverage: number): Interval {
  const { inside } = places(sorted.length, coverage)
  let best = 0
  for (let left = 0; left + inside < sorted.length; left++) {
    if (sorted[left + inside] - sorted[left] < sorted[best + inside] - sorted[best]) best = left
  }
  return { low: sorted[best], high: sorted[best + inside] }
}

/** How many trials lie in the interval: q = pM, rounded. */
function places(count: number, coverage: number): { readonly inside: number; readonly outside: number } {
  if (!(coverage > 0 && coverage < 1)) throw new RangeError(`coverage must be between 0 and 1, got ${coverage}`)
  const inside = Math.floor(coverage * count + 0.5)
  if (!(inside < count)) throw new RangeError(`${count} trials are too few for a coverage of ${coverage}`)
  return { inside, outside: count - inside }
}
