import { relativeDeviance, stirlingError } from './logGamma.ts'
import { solveTail, type TailAt } from './solveTail.ts'

/** Regularised incomplete gamma functions P(a, x) and Q(a, x) = 1 − P, each with full relative precision where small. */
export function incompleteGamma(a: number, x: number): { readonly lower: number; readonly upper: number } {
  if (!(x >= 0)) throw new RangeError(`x must be zero or more, got ${x}`)
  const constant = gammaConstant(a)
  if (x === 0) return { lower: 0, upper: 1 }
  if (x === Number.POSITIVE_INFINITY) return { lower: 1, upper: 0 }
  const density = constant * Math.exp(-relativeDeviance(a, x))
  if (isLow(a, x)) {
    const lower = density * series(a, x)
    return { lower, upper: 1 - lower }
  }
  const upper = density * fraction(a, x)
  return { lower: 1 - upper, upper }
}

/** ln x at which the lower tail P(a, x) or the upper tail Q(a, x) equals `probability`; `start` is a fair guess, if any. */
export function gammaLogQuantile(
  side: 'lower' | 'upper',
  probability: number,
  { shape, start }: { readonly shape: number; readonly start?: number },
): number {
  const constant = gammaConstant(shape)
  const logTarget = Math.log(probability)
  // P → x^a/(aΓ(a)) as x → 0; as the log tail is concave, this straight line never starts too far right.
  const line = (logTarget + Math.log(shape / constant) - shape) / shape + Math.log(shape)
  if (side === 'lower' && line < -37) return line
  const logConstant = Math.log(constant)
  return solveTail(side, logTarget, {
    start: start ?? (side === 'lower' ? line : Math.log(shape - logTarget)),
    evaluate: (z) => tailAt(side, z, { shape, logConstant }),
  })
}

/** √(a/2π) e^(−δ(a)): the part of the density that does not depend on x. */
function gammaConstant(a: number): number {
  if (!(a > 0)) throw new RangeError(`shape must be above zero, got ${a}`)
  return Math.sqrt(a / (2 * Math.PI)) * Math.exp(-stirlingError(a))
}

const isLow = (a: number, x: number): boolean => x < a + 1

/** The density by ln x is x^a e^(−x) / Γ(a), in the form of Loader 2000. */
function tailAt(
  side: 'lower' | 'upper',
  z: number,
  { shape, logConstant }: { readonly shape: number; readonly logConstant: number },
): TailAt {
  const x = Math.exp(z)
  const logDensity = logConstant - relativeDeviance(shape, x)
  const bend = shape - x
  const low = isLow(shape, x)
  const ratio = low ? series(shape, x) : fraction(shape, x)
  if (low === (side === 'lower')) return { logTail: logDensity + Math.log(ratio), slope: 1 / ratio, bend }
  const density = Math.exp(logDensity)
  const other = density * ratio
  return { logTail: Math.log1p(-other), slope: density / (1 - other), bend }
}

/** Series DLMF 8.11.4. */
function series(a: number, x: number): number {
  let term = 1 / a
  let sum = term
  for (let n = 1; n <= 1_000_000; n++) {
    term *= x / (a + n)
    sum += term
    if (term < sum * 1e-17) return sum
  }
  throw new RangeError(`incomplete gamma does not converge at a ${a}, x ${x}`)
}

/** Continued fraction DLMF 8.9.2 by the modified Lentz method (Thompson & Barnett 1986). */
function fraction(a: number, x: number): number {
  let b = x + 1 - a
  let c = 1e300
  let d = 1 / b
  let h = d
  for (let n = 1; n <= 1_000_000; n++) {
    const an = -n * (n - a)
    b += 2
    d = 1 / (an * d + b)
    c = b + an / c
    const change = c * d
    h *= change
    if (Math.abs(change - 1) < 3e-16) return h
  }
  throw new RangeError(`incomplete gamma does not converge at a ${a}, x ${x}`)
}
