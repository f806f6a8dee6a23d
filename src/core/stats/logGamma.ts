const halfLogTwoPi = 0.9189385332046727

/**
 * δ(x) = ln Γ(x) − [(x − ½) ln x − x + ½ ln 2π] for x > 0: what Stirling's formula lacks. Densities built from it keep
 * all digits where Γ itself is huge (Loader 2000, Fast and accurate computation of binomial probabilities). Series of
 * Abramowitz & Stegun 6.1.40 from x = 12 on; below, the recurrence Γ(x + 1) = xΓ(x).
 */
export function stirlingError(x: number): number {
  if (!(x > 0)) throw new RangeError(`stirlingError needs x above zero, got ${x}`)
  if (x >= 12) return series(x)
  let product = 1
  let far = x
  while (far < 12) {
    product *= far
    far += 1
  }
  return stirling(far) + series(far) - Math.log(product) - stirling(x)
}

/** ln Γ(x) for x > 0. */
export const logGamma = (x: number): number => stirlingError(x) + stirling(x) + halfLogTwoPi

const stirling = (x: number): number => (x - 0.5) * Math.log(x) - x

function series(x: number): number {
  const y = 1 / (x * x)
  const sum =
    1 / 12 -
    y *
      (1 / 360 -
        y * (1 / 1260 - y * (1 / 1680 - y * (1 / 1188 - y * (691 / 360360 - y * (1 / 156 - (y * 3617) / 122400))))))
  return sum / x
}

/**
 * x ln(x/y) + y − x for x, y > 0 without cancellation near x = y (Loader 2000): the exponent of a Poisson or binomial
 * density about its peak. Give x − y apart where it is known better than by subtraction.
 */
export function relativeDeviance(x: number, y: number, difference: number = x - y): number {
  const v = difference / (x + y)
  if (!(Math.abs(v) < 0.1)) return x * Math.log(x / y) - difference
  let sum = difference * v
  let term = 2 * x * v
  for (let j = 3; ; j += 2) {
    term *= v * v
    const next = sum + term / j
    if (next === sum) return sum
    sum = next
  }
}
