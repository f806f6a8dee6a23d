import { type CorrelatedFit, correlatedFit, type PriorBelief } from './correlatedFit.ts'
import { forceRegression, frictionRegression, type StepProducts } from './stepProducts.ts'
import { type PooledHarmonic, poolHarmonics, type StepHarmonic } from './turnRipple.ts'

/** Whether a ripple grows with friction (run-out, load) or is the same at any friction (tilt of the plate). */
export type RippleScale = 'relative' | 'absolute'

/** One turn order as every step shows it by its own data. */
export interface OrderRipple {
  readonly order: number
  /** One entry a step; undefined where the step holds too little of a turn. */
  readonly friction: readonly (StepHarmonic | undefined)[]
  readonly force: readonly (StepHarmonic | undefined)[]
}

/** Ripple of a record: its scale, the orders that it shows, and each step's own harmonics. */
export interface RecordRippleFit {
  readonly scale: RippleScale
  /** Orders that the record as a whole shows, 1 always among them. */
  readonly orders: readonly number[]
  readonly measured: readonly OrderRipple[]
}

/** From this many turns on a step can tell its own harmonics. */
export const turnsForRipple = 1

/** Deviation, as a share of friction, that stands for "unknown ripple" while correlations are learned. */
const unknownRipple = 0.1

/** Twice the χ² mean plus four deviations: a harmonic under it is noise. */
export const isSignal = (pooled: PooledHarmonic): boolean =>
  pooled.signal > 2 * pooled.steps + 8 * Math.sqrt(pooled.steps)

/** Harmonics of each step by its own data, and which of them the record as a whole shows. */
export function recordRipple(
  steps: readonly StepProducts[],
  orders: readonly number[],
  correlations: readonly number[],
): RecordRippleFit {
  const own = steps.map((step, s) => stepHarmonics(step, orders, correlations[s]))
  const measured = orders.map(
    (order, k): OrderRipple => ({
      order,
      friction: own.map((harmonics) => harmonics?.friction[k]),
      force: own.map((harmonics) => harmonics?.force[k]),
    }),
  )
  const [first] = measured
  return {
    scale: first === undefined ? 'relative' : scaleOf(first, steps),
    orders: measured.filter((ripple, k) => k === 0 || shows(ripple, steps)).map((ripple) => ripple.order),
    measured,
  }
}

/** All orders of one step, by its own data; undefined where it holds too little of a turn. */
function stepHarmonics(
  step: StepProducts,
  orders: readonly number[],
  correlation: number,
): { friction: StepHarmonic[]; force: StepHarmonic[] } | undefined {
  if (step.turns < turnsForRipple || step.rows < 4 * (1 + 2 * orders.length)) return undefined
  const friction = correlatedFit(frictionRegression(step, step.plainFriction, orders), correlation)
  const force = correlatedFit(forceRegression(step, orders), correlation)
  if (friction === undefined || force === undefined) return undefined
  return { friction: harmonicsOf(friction), force: harmonicsOf(force) }
}

/** Coefficients after the level are cosine and sine of each order. */
function harmonicsOf({ coefficients, covariance }: CorrelatedFit): StepHarmonic[] {
  const size = coefficients.length
  return Array.from({ length: (size - 1) / 2 }, (_, k) => {
    const at = 1 + 2 * k
    return {
      cosine: coefficients[at],
      sine: coefficients[at + 1],
      cosineVariance: covariance[at * size + at],
      sineVariance: covariance[(at + 1) * size + at + 1],
    }
  })
}

const over = (harmonic: StepHarmonic, by: number): StepHarmonic => ({
  cosine: harmonic.cosine / by,
  sine: harmonic.sine / by,
  cosineVariance: harmonic.cosineVariance / (by * by),
  sineVariance: harmonic.sineVariance / (by * by),
})

/** Harmonics of all steps but one on the record's scale, pooled. */
export function pooledRipple(
  ripple: OrderRipple,
  steps: readonly StepProducts[],
  { scale, without }: { scale: RippleScale; without?: number },
): PooledHarmonic | undefined {
  const usable = ripple.friction.flatMap((harmonic, s) =>
    harmonic === undefined || s === without || !(steps[s].plainFriction > 0)
      ? []
      : [scale === 'relative' ? over(harmonic, steps[s].plainFriction) : harmonic],
  )
  return poolHarmonics(usable)
}

/** The scale on which the steps agree better: the smaller scatter between steps against the ripple itself. */
function scaleOf(ripple: OrderRipple, steps: readonly StepProducts[]): RippleScale {
  const spread = (scale: RippleScale): number => {
    const pooled = pooledRipple(ripple, steps, { scale })
    return pooled === undefined ? 0 : pooled.between / (pooled.cosine ** 2 + pooled.sine ** 2 + pooled.variance)
  }
  return spread('absolute') < spread('relative') ? 'absolute' : 'relative'
}

function shows(ripple: OrderRipple, steps: readonly StepProducts[]): boolean {
  const pooled = pooledRipple(ripple, steps, { scale: 'relative' })
  return pooled !== undefined && isSignal(pooled)
}

/** Beliefs for a step while nothing is known yet: level free, harmonics wide. */
export function openBeliefs(step: StepProducts, orders: readonly number[]): (PriorBelief | undefined)[] {
  const deviation = unknownRipple * Math.abs(step.plainFriction)
  const belief = step.turns >= turnsForRipple || !(deviation > 0) ? undefined : { mean: 0, deviation }
  return [undefined, ...orders.flatMap(() => [belief, belief])]
}
