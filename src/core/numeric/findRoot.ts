/** A root, and why the search stopped. */
export interface Root {
  readonly at: number
  /** The function's value there. */
  readonly residual: number
  readonly evaluations: number
  readonly end: 'converged' | 'stepLimit'
}

/**
 * Root of a continuous function between two places where its signs differ, by inverse quadratic and secant steps with
 * bisection to fall back on (Brent 1973, Algorithms for Minimization without Derivatives, ch. 4). Refuses ends of one sign
 * and ends that are not numbers.
 *
 * @param tolerance on the place, beside four units in its last digit
 */
export function findRoot(
  f: (x: number) => number,
  [low, high]: readonly [low: number, high: number],
  { tolerance = 0, mostEvaluations = 200 }: { readonly tolerance?: number; readonly mostEvaluations?: number } = {},
): Root {
  let a = low
  let b = high
  let fa = f(a)
  let fb = f(b)
  if (!(fa * fb <= 0)) throw new RangeError(`root is not bracketed: ${fa} at ${low}, ${fb} at ${high}`)
  let c = a
  let fc = fa
  let step = b - a
  let before = step
  for (let evaluations = 2; ; evaluations++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, b, c] = [b, c, b]
      ;[fa, fb, fc] = [fb, fc, fb]
    }
    const within = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= within || fb === 0) return { at: b, residual: fb, evaluations, end: 'converged' }
    if (evaluations >= mostEvaluations) return { at: b, residual: fb, evaluations, end: 'stepLimit' }
    const tried = Math.abs(before) >= within && Math.abs(fa) > Math.abs(fb) ? curvedStep({ a, b, c, fa, fb, fc }) : half
    const kept = Math.sign(tried) === Math.sign(half) && Math.abs(tried) < 1.5 * Math.abs(half) - within / 2
    const useTried = kept && Math.abs(tried) < Math.abs(before / 2)
    before = useTried ? step : half
    step = useTried ? tried : half
    a = b
    fa = fb
    b += Math.abs(step) > within ? step : Math.sign(half) * within
    fb = f(b)
    if (Number.isNaN(fb)) throw new RangeError(`the function is not a number at ${b}`)
    if (Math.sign(fb) === Math.sign(fc)) {
      c = a
      fc = fa
      step = b - a
      before = step
    }
  }
}

interface Three {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly fa: number
  readonly fb: number
  readonly fc: number
}

/** From b: by the secant where only two places differ, by the inverse parabola through three otherwise. */
function curvedStep({ a, b, c, fa, fb, fc }: Three): number {
  if (a === c) return ((b - a) * fb) / (fa - fb)
  const r = fb / fc
  const s = fb / fa
  const q = fa / fc
  const top = s * ((c - b) * q * (q - r) - (b - a) * (r - 1))
  return -top / ((q - 1) * (r - 1) * (s - 1))
}
