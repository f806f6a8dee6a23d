import { relativeDeviance, stirlingError } from './logGamma.ts'
import { solveTail, type TailAt } from './solveTail.ts'

/** Arguments of the incomplete beta function; y = 1 − x is given apart so that neither end loses digits. */
export interface BetaArguments {
  readonly x: number
  readonly y: number
  readonly a: number
  readonly b: number
}

/** Regularised incomplete beta function I_x(a, b), with full relative precision where it is small. */
export function incompleteBeta(at: BetaArguments): number {
  const { x, y, a, b } = at
  if (!(x >= 0 && y >= 0 && Math.abs(x + y - 1) <= 1e-12)) throw new RangeError(`x + y must be 1, got ${x} and ${y}`)
  const constant = betaConstant(a, b)
  if (x === 0) return 0
  if (y === 0) return 1
  const density = constant * Math.exp(-betaDeviance(at))
  return isLow(at) ? density * ratio(at) : 1 - density * ratio(flipped(at))
}

/**
 * ln(x/y) at which I_x(a, b) = `probability`; the odds x/y of a beta variable are those of t² and F up to a factor.
 * For probabilities above one half ask for the other end: −betaLogOdds(1 − p, b, a). `start` is a fair guess, if any.
 */
export function betaLogOdds(
  probability: number,
  { a, b, start }: { readonly a: number; readonly b: number; readonly start?: number },
): number {
  const constant = betaConstant(a, b)
  const logTarget = Math.log(probability)
  // The end of the tail is x^a/(a B(a, b)); as the log tail is concave, this straight line never starts too far right.
  const logScale = Math.log(a / constant) - a * Math.log1p(b / a) - b * Math.log1p(a / b)
  const line = (logTarget + logScale) / a
  if (line < -37 - Math.log(1 + b)) return line
  const logConstant = Math.log(constant)
  return solveTail('lower', logTarget, {
    start: start ?? line,
    evaluate: (z) => lowerTail(z, { a, b, logConstant }),
  })
}

/** √(ab/2π(a+b)) e^(δ(a+b) − δ(a) − δ(b)): the part of the density that does not depend on x. */
function betaConstant(a: number, b: number): number {
  if (!(a > 0 && b > 0)) throw new RangeError(`both shapes must be above zero, got ${a} and ${b}`)
  const n = a + b
  return Math.sqrt((a / n) * (b / (2 * Math.PI))) * Math.exp(stirlingError(n) - stirlingError(a) - stirlingError(b))
}

/** Exponent of x^a y^b / B(a, b), the derivative of I_x(a, b) by ln(x/y), in the form of Loader 2000. */
function betaDeviance({ x, y, a, b }: BetaArguments): number {
  const difference = a * y - b * x
  return relativeDeviance(a, (a + b) * x, difference) + relativeDeviance(b, (a + b) * y, -difference)
}

const isLow = ({ x, a, b }: BetaArguments): boolean => x * (a + b + 2) <= a + 1

function lowerTail(z: number, { a, b, logConstant }: { a: number; b: number; logConstant: number }): TailAt {
  const odds = Math.exp(z)
  const y = 1 / (1 + odds)
  const x = odds * y
  const at = { x, y, a, b }
  const logDensity = logConstant - betaDeviance(at)
  const bend = a * y - b * x
  if (isLow(at)) {
    const over = ratio(at)
    return { logTail: logDensity + Math.log(over), slope: 1 / over, bend }
  }
  const density = Math.exp(logDensity)
  const upper = density * ratio(flipped(at))
  return { logTail: Math.log1p(-upper), slope: density / (1 - upper), bend }
}

/**
 * I_x(a, b) over its density by ln(x/y): the continued fraction of DiDonato & Morris 1992 (ACM Trans. Math. Softw. 18:360,
 * eq. 9) by the modified Lentz method (Thompson & Barnett 1986). x and y enter it without subtracting one from the other.
 */
function ratio({ x, y, a, b }: BetaArguments): number {
  const offset = a * y - b * x + 1
  let f = guarded((a * offset) / (a + 1))
  let c = f
  let d = 0
  for (let m = 1; m <= 100_000; m++) {
    const am = a + 2 * m
    const over = (m * (b - m) * x) / (am - 1)
    const top = ((a + m - 1) * (a + b + m - 1) * over * x) / (am - 1)
    const bottom = m + over + ((a + m) * (offset + m * (1 + y))) / (am + 1)
    d = 1 / guarded(bottom + top * d)
    c = guarded(bottom + top / c)
    const change = c * d
    f *= change
    if (Math.abs(change - 1) < 3e-16) return 1 / f
  }
  throw new RangeError(`incomplete beta does not converge at x ${x}, a ${a}, b ${b}`)
}

const flipped = ({ x, y, a, b }: BetaArguments): BetaArguments => ({ x: y, y: x, a: b, b: a })

const guarded = (value: number): number => (Math.abs(value) < 1e-300 ? 1e-300 : value)
