/** A curve through given points; refuses places outside them. */
export type Interpolant = (x: number) => number

/** Straight lines between points of rising x. */
export function linearInterpolant(x: ArrayLike<number>, y: ArrayLike<number>): Interpolant {
  checkKnots(x, y)
  return (at) => {
    const i = intervalOf(x, at)
    const part = (at - x[i]) / (x[i + 1] - x[i])
    return part === 1 ? y[i + 1] : y[i] + part * (y[i + 1] - y[i])
  }
}

/**
 * Smooth curve through points of rising x that rises and falls only where the points do: cubic Hermite pieces with the
 * slopes of Fritsch & Butland 1984 (SIAM J. Sci. Stat. Comput. 5:300), a weighted harmonic mean, zero at turning points.
 */
export function monotoneInterpolant(x: ArrayLike<number>, y: ArrayLike<number>): Interpolant {
  checkKnots(x, y)
  const slopes = knotSlopes(x, y)
  return (at) => {
    const i = intervalOf(x, at)
    const width = x[i + 1] - x[i]
    const t = (at - x[i]) / width
    const u = 1 - t
    const ends = y[i] * u * u * (1 + 2 * t) + y[i + 1] * t * t * (1 + 2 * u)
    return ends + width * t * u * (slopes[i] * u - slopes[i + 1] * t)
  }
}

function knotSlopes(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const last = x.length - 1
  const chord = (i: number): number => (y[i + 1] - y[i]) / (x[i + 1] - x[i])
  const slopes = new Float64Array(x.length)
  if (last === 1) return slopes.fill(chord(0))
  for (let i = 1; i < last; i++) {
    const before = chord(i - 1)
    const after = chord(i)
    if (!(before * after > 0)) continue
    const left = x[i] - x[i - 1]
    const right = x[i + 1] - x[i]
    const nearer = (2 * right + left) / (3 * (left + right))
    slopes[i] = 1 / (nearer / before + (1 - nearer) / after)
  }
  slopes[0] = endSlope([x[1] - x[0], x[2] - x[1]], [chord(0), chord(1)])
  slopes[last] = endSlope([x[last] - x[last - 1], x[last - 1] - x[last - 2]], [chord(last - 1), chord(last - 2)])
  return slopes
}

/** Slope at an end by the parabola through three points, held back where it would overshoot. */
function endSlope([width, next]: readonly [number, number], [chord, nextChord]: readonly [number, number]): number {
  const slope = ((2 * width + next) * chord - width * nextChord) / (width + next)
  if (slope * chord <= 0) return 0
  return chord * nextChord <= 0 && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope
}

/** Index of the knot at or before `at`, by halving. */
function intervalOf(x: ArrayLike<number>, at: number): number {
  const last = x.length - 1
  if (!(at >= x[0] && at <= x[last])) throw new RangeError(`${at} lies outside ${x[0]} to ${x[last]}`)
  let low = 0
  let high = last
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (x[middle] <= at) low = middle
    else high = middle
  }
  return low
}

function checkKnots(x: ArrayLike<number>, y: ArrayLike<number>): void {
  if (!(x.length >= 2 && y.length === x.length)) {
    throw new RangeError(`interpolation needs two or more points, got ${x.length} x and ${y.length} y`)
  }
  for (let i = 1; i < x.length; i++) {
    if (!(x[i] > x[i - 1])) throw new RangeError(`x must rise, got ${x[i]} after ${x[i - 1]} at ${i}`)
  }
}
