/** Places and weights of a quadrature rule. */
export interface QuadratureRule {
  readonly nodes: Float64Array
  readonly weights: Float64Array
}

/**
 * Gauss–Legendre rule of `count` points between `low` and `high`, exact for polynomials up to degree 2·count − 1. Roots of the
 * Legendre polynomial by Newton steps from the guess of Abramowitz & Stegun 22.16.6.
 */
export function gaussLegendre(
  count: number,
  [low, high]: readonly [low: number, high: number] = [-1, 1],
): QuadratureRule {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`count must be a whole number from 1, got ${count}`)
  const nodes = new Float64Array(count)
  const weights = new Float64Array(count)
  const centre = (low + high) / 2
  const half = (high - low) / 2
  for (let i = 0; i < (count + 1) >> 1; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5))
    let slope = 0
    for (let round = 0; round < 10; round++) {
      const legendre = legendreAt(count, x)
      slope = legendre.slope
      const step = legendre.value / slope
      x -= step
      if (Math.abs(step) < 1e-15) break
    }
    slope = legendreAt(count, x).slope
    nodes[i] = centre - half * x
    nodes[count - 1 - i] = centre + half * x
    weights[i] = weights[count - 1 - i] = (2 * half) / ((1 - x * x) * slope * slope)
  }
  return { nodes, weights }
}

function legendreAt(count: number, x: number): { readonly value: number; readonly slope: number } {
  let value = x
  let before = 1
  for (let k = 2; k <= count; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * before) / k
    before = value
    value = next
  }
  return { value, slope: (count * (x * value - before)) / (x * x - 1) }
}
