import { type CorrelatedFit, correlatedFit, type PriorBelief } from './correlatedFit.ts'
import { meanInflation } from './meanInflation.ts'
import type { NoiseCorrelation } from './noiseCorrelation.ts'
import { frictionRegression, type StepProducts } from './stepProducts.ts'

/** What the rest of the record says of one harmonic, in friction units or as a share of friction. */
export interface RippleBelief {
  readonly order: number
  readonly cosine: number
  readonly sine: number
  readonly deviation: number
  readonly perFriction: boolean
  /** How well `deviation` itself is known. */
  readonly degreesOfFreedom: number
}

/** Friction of one step with its own uncertainty. */
export interface StepFriction {
  readonly friction: number
  /** Standard uncertainty, own part. */
  readonly uncertainty: number
  readonly degreesOfFreedom: number
  /** Level over a whole turn and the turn terms, in the order of the design. */
  readonly coefficients: Float64Array
  /** Part of the variance that comes from the ripple of a turn that was not completed. */
  readonly rippleShare: number
  /** Mean axial force over a whole turn. */
  readonly force: number
}

const rounds = 4

/** Below this many independent rows every row is weighed alike. */
const fewestIndependent = 10

/**
 * Friction of one step: the ratio of the mean tangential to the mean axial force over a whole turn, from a joint
 * generalised least-squares fit of level and turn harmonics with autocorrelated errors. Where the step holds little
 * of a turn, what the other steps say of the ripple takes the place of what it can not say itself, with its
 * uncertainty.
 */
export function stepFriction(
  step: StepProducts,
  noise: NoiseCorrelation,
  { orders, beliefs }: { orders: readonly number[]; beliefs: readonly (RippleBelief | undefined)[] },
): StepFriction | undefined {
  let friction = step.plainFriction
  let fit: CorrelatedFit | undefined
  const independent = (step.rows * (1 - noise.correlation)) / (1 + noise.correlation)
  const weight = independent < fewestIndependent ? Math.min(0, noise.correlation) : noise.correlation
  for (let round = 0; round < rounds; round++) {
    fit = correlatedFit(frictionRegression(step, friction, orders), weight, priors(beliefs, friction))
    if (fit === undefined) return undefined
    friction += fit.coefficients[0]
  }
  if (fit === undefined || !Number.isFinite(friction)) return undefined
  const context = { friction, noise, orders, beliefs, fit, weight }
  const weighted = noiseVariance(step, context)
  const ripple = Math.max(0, fit.covariance[0] - weighted)
  const noiseOnly = weighted * flatteningFactor(step, context)
  const total = noiseOnly + ripple
  return {
    friction,
    uncertainty: Math.sqrt(total),
    degreesOfFreedom: degreesOf(total, { noiseOnly, fit, noise, beliefs }),
    coefficients: fit.coefficients,
    rippleShare: total > 0 ? Math.max(0, 1 - noiseOnly / total) : 0,
    force: step.turnForce,
  }
}

function priors(beliefs: readonly (RippleBelief | undefined)[], friction: number): (PriorBelief | undefined)[] {
  const parts = beliefs.flatMap((belief) => {
    if (belief === undefined) return [undefined, undefined]
    const by = belief.perFriction ? Math.abs(friction) : 1
    const deviation = Math.max(belief.deviation * by, 1e-12)
    return [
      { mean: belief.cosine * by, deviation },
      { mean: belief.sine * by, deviation },
    ]
  })
  return [undefined, ...parts]
}

interface Context {
  readonly friction: number
  readonly noise: NoiseCorrelation
  readonly orders: readonly number[]
  readonly beliefs: readonly (RippleBelief | undefined)[]
  readonly fit: CorrelatedFit
  /** Correlation by which the rows were weighed. */
  readonly weight: number
}

/** Variance of the level if the believed harmonics were exact. */
function noiseVariance(step: StepProducts, { friction, orders, beliefs, fit, weight }: Context): number {
  const free = orders.filter((_, k) => beliefs[k] === undefined)
  if (free.length === orders.length) return fit.covariance[0]
  const plain = correlatedFit(frictionRegression(step, friction, free), weight)
  return plain === undefined || !(plain.variance > 0)
    ? fit.covariance[0]
    : Math.min((plain.covariance[0] / plain.variance) * fit.variance, fit.covariance[0])
}

/**
 * Where few independent values are left, optimal weights lean on the first and last row alone, and a drift would rule
 * the value. Such a step is weighed evenly, as the plain mean; this is what the variance of that mean
 * is under the correlation that was found, over what the weights take it for.
 */
function flatteningFactor(step: StepProducts, { friction, noise, orders, beliefs, fit, weight }: Context): number {
  if (weight === noise.correlation) return 1
  const level = frictionRegression(step, friction, [])
  const asWeighed = correlatedFit(level, weight)
  const asFound = correlatedFit(
    frictionRegression(step, friction, orders),
    noise.correlation,
    priors(beliefs, friction),
  )
  if (asWeighed === undefined || asFound === undefined || !(asWeighed.variance > 0 && fit.variance > 0)) return 1
  const spread = asFound.variance / (1 - noise.correlation ** 2)
  const taken = (asWeighed.covariance[0] / asWeighed.variance) * fit.variance
  return (spread * meanInflation(noise.correlation, step.rows)) / step.rows / taken
}

/**
 * Welch–Satterthwaite over noise and ripple. The noise part is known as well as its variance and its correlation are:
 * var(mean) ∝ s²/(1 − ρ)², and d ln (1 − ρ)⁻²/dz = 2(1 + ρ) for z = atanh ρ.
 */
function degreesOf(
  total: number,
  { noiseOnly, fit, noise, beliefs }: { noiseOnly: number } & Pick<Context, 'fit' | 'noise' | 'beliefs'>,
): number {
  // Readings without any scatter, as a simulator or a stuck sensor gives them.
  if (!(total > 0)) return Math.max(fit.degreesOfFreedom, 1)
  const spread = 2 / Math.max(fit.degreesOfFreedom, 1) + (2 * (1 + noise.correlation)) ** 2 * noise.variance
  const noiseDegrees = 2 / spread
  const rippleDegrees = Math.min(...beliefs.map((belief) => belief?.degreesOfFreedom ?? Number.POSITIVE_INFINITY))
  const ripple = Math.max(0, total - noiseOnly)
  return (total * total) / ((noiseOnly * noiseOnly) / noiseDegrees + (ripple * ripple) / rippleDegrees)
}
