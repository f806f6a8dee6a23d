import { mean } from '../../stats/index.ts'
import { assumedTilt } from '../defaults.ts'
import { aloneStep } from './aloneStep.ts'
import { atOneSpeed, localSlopes, type PlainPoint } from './atOneSpeed.ts'
import { correlatedFit } from './correlatedFit.ts'
import { meanInflation } from './meanInflation.ts'
import { type NoiseCorrelation, noiseCorrelation, type SharedNoise } from './noiseCorrelation.ts'
import {
  isSignal,
  openBeliefs,
  pooledRipple,
  type RecordRippleFit,
  recordRipple,
  turnsForRipple,
} from './recordRipple.ts'
import { settledFrom } from './settled.ts'
import { type RippleBelief, stepFriction } from './stepFriction.ts'
import { type ForceRipple, frictionRegression, type StepProducts, stepProducts } from './stepProducts.ts'
import type { StepResult } from './stepResult.ts'
import type { StepRows } from './stepRows.ts'
import { warmUpCut } from './warmUpCut.ts'
import { whiteningFactor } from './whiteningFactor.ts'
import { widened } from './widened.ts'

/** Fewest rows that a step may keep. */
export const fewestKept = 8

export interface RecordFriction {
  readonly steps: readonly StepResult[]
  readonly ripple: RecordRippleFit
  readonly noise: SharedNoise
}

/**
 * Friction of all steps of a record together: first a round to learn ripple and noise from settled rows, then the
 * warm-up cut with the ripple taken off, then the estimate of each step with what the others say.
 */
export function recordFriction(
  raw: readonly StepRows[],
  { settleTolerance, orders, cutWarmUp }: { settleTolerance: number; orders: readonly number[]; cutWarmUp: boolean },
): RecordFriction {
  const settled = raw.map((rows) => (cutWarmUp ? settledFrom(rows.speed, rows.step.target, settleTolerance) : 0))
  const starts = settled.map((from, s) => from ?? Math.floor(raw[s].speed.length / 5))
  // Noise and ripple are learned where no warm-up is left, or its trace would pass for correlation.
  const late = starts.map((from, s) => (cutWarmUp ? Math.max(from, Math.floor(raw[s].speed.length / 3)) : from))
  const all = cutWarmUp ? referred(raw, late) : raw
  const first = learn(all, late, { orders, forceRipple: [] })
  const cut = starts.map((from, s) => (cutWarmUp ? from + warmUp(all[s], from, { first, index: s }) : from))
  const second = learn(all, cut, { orders, forceRipple: forceRippleOf(first) })
  const speeds = raw.map((rows, s) =>
    mean(rows.speed.subarray(cutWarmUp ? Math.min(late[s], rows.speed.length - 1) : cut[s])),
  )
  const steps = all.map((rows, s): StepResult => {
    const products = second.products[s]
    const place = second.place[s]
    const noise: NoiseCorrelation | undefined = second.noise.steps[place]
    const { beliefs, tiltAssumed } = products === undefined ? { beliefs: [], tiltAssumed: false } : beliefsOf(second, s)
    const estimate =
      products === undefined ? undefined : stepFriction(products, noise, { orders: second.ripple.orders, beliefs })
    return {
      rows,
      from: cut[s],
      speed: speeds[s],
      settled: settled[s] !== undefined,
      products,
      estimate,
      beliefs,
      tiltAssumed,
      place,
      noise,
      correlationTime:
        noise === undefined || products === undefined ? 1 : meanInflation(noise.correlation, products.rows),
    }
  })
  const whitening = second.usable.length > 1 ? whiteningFactor(steps, second.ripple.orders) : 1
  const said = steps.map((step) =>
    second.usable.length > 1 ? widened(step, whitening) : aloneStep(step, second.ripple.orders),
  )
  return { steps: said, ripple: second.ripple, noise: second.noise }
}

/** Rows referred to the speed that each step settles to, by the slope of the plain curve. */
function referred(raw: readonly StepRows[], starts: readonly number[]): StepRows[] {
  const points = raw.map((rows, s): PlainPoint | undefined => {
    if (rows.force.length - starts[s] < fewestKept) return undefined
    const tangential = mean(rows.tangential.subarray(starts[s]))
    return { speed: mean(rows.speed.subarray(starts[s])), friction: tangential / mean(rows.force.subarray(starts[s])) }
  })
  const slopes = localSlopes(points)
  return raw.map((rows, s) => atOneSpeed(rows, slopes[s], points[s]?.speed ?? 0))
}

interface Learned {
  readonly products: readonly (StepProducts | undefined)[]
  /** Index of each step among the usable ones. */
  readonly place: readonly number[]
  readonly usable: readonly StepProducts[]
  readonly noise: SharedNoise
  readonly ripple: RecordRippleFit
}

/** Ripple of the force that the record shows, for the orders whose friction ripple or force ripple is clear. */
function forceRippleOf({ ripple, usable }: Learned): ForceRipple[] {
  return ripple.measured.flatMap((measured) => {
    const pooled = pooledRipple({ ...measured, friction: measured.force }, usable, { scale: 'absolute' })
    return pooled === undefined || !isSignal(pooled)
      ? []
      : [{ order: measured.order, cosine: pooled.cosine, sine: pooled.sine }]
  })
}

function learn(
  all: readonly StepRows[],
  starts: readonly number[],
  { orders, forceRipple }: { orders: readonly number[]; forceRipple: readonly ForceRipple[] },
): Learned {
  const products = all.map((rows, s) =>
    rows.force.length - starts[s] < fewestKept ? undefined : stepProducts(rows, starts[s], forceRipple),
  )
  const usable = products.filter((step) => step !== undefined)
  let count = 0
  const place = products.map((step) => (step === undefined ? -1 : count++))
  const noise = noiseCorrelation(
    usable.map((step) => {
      const chosen = fittable(step, orders)
      const regression = frictionRegression(step, step.plainFriction, chosen)
      const beliefs = openBeliefs(step, chosen)
      return (correlation: number) => correlatedFit(regression, correlation, beliefs)?.logLikelihood ?? Number.NaN
    }),
  )
  const ripple = recordRipple(
    usable,
    orders,
    noise.steps.map((step) => step.correlation),
  )
  return { products, place, usable, noise, ripple }
}

/** Orders that a step's rows can carry. */
const fittable = (step: StepProducts, orders: readonly number[]): readonly number[] =>
  orders.slice(0, Math.max(0, Math.floor((step.rows / 4 - 1) / 2)))

/** Warm-up rows after `from`, with the record's ripple taken off. */
function warmUp(rows: StepRows, from: number, { first, index }: { first: Learned; index: number }): number {
  const products = first.products[index]
  if (products === undefined || rows.force.length - from < 4 * fewestKept) return 0
  const friction = products.plainFriction
  const scale = first.ripple.scale === 'relative' ? friction : 1
  const turns = first.ripple.orders.map((order) => {
    const measured = first.ripple.measured.find((ripple) => ripple.order === order)
    return measured && pooledRipple(measured, first.usable, { scale: first.ripple.scale })
  })
  const series = new Float64Array(rows.force.length - from)
  for (let i = 0; i < series.length; i++) {
    const row = from + i
    let value = (rows.tangential[row] - friction * rows.force[row]) / products.turnForce
    for (let k = 0; k < turns.length; k++) {
      const turn = turns[k]
      if (turn === undefined) continue
      const at = 2 * rows.orders.indexOf(first.ripple.orders[k])
      value -= scale * (turn.cosine * rows.turnColumns[at][row] + turn.sine * rows.turnColumns[at + 1][row])
    }
    series[i] = value
  }
  const independent = first.usable.reduce(
    (sum, step, s) =>
      sum + (step.rows * (1 - first.noise.steps[s].correlation)) / (1 + first.noise.steps[s].correlation),
    0,
  )
  return warmUpCut(series, first.noise.steps[first.place[index]].correlation, independent)
}

/** What the other steps say of the ripple; an assumed tilt where no step of the record holds a turn. */
function beliefsOf(learned: Learned, index: number): { beliefs: (RippleBelief | undefined)[]; tiltAssumed: boolean } {
  const { ripple, usable, place } = learned
  const step = usable[place[index]]
  let tiltAssumed = false
  const beliefs = ripple.orders.map((order, k): RippleBelief | undefined => {
    const measured = ripple.measured.find((one) => one.order === order)
    const pooled = measured && pooledRipple(measured, usable, { scale: ripple.scale, without: place[index] })
    if (pooled !== undefined) {
      // A single other step cannot tell how much steps differ; a third of the ripple stands in.
      const unseen = pooled.steps > 1 ? 0 : (pooled.cosine ** 2 + pooled.sine ** 2) / 9
      return {
        order,
        cosine: pooled.cosine,
        sine: pooled.sine,
        deviation: Math.sqrt(pooled.variance + pooled.between + unseen),
        perFriction: ripple.scale === 'relative',
        degreesOfFreedom: Math.max(2, 2 * (pooled.steps - 1)),
      }
    }
    if (step.turns >= turnsForRipple || k > 0) return step.turns >= turnsForRipple ? undefined : nothing(order)
    tiltAssumed = true
    return { ...nothing(order), deviation: Math.tan(assumedTilt) / Math.SQRT2, degreesOfFreedom: 8 }
  })
  return { beliefs, tiltAssumed }
}

const nothing = (order: number): RippleBelief => ({
  order,
  cosine: 0,
  sine: 0,
  deviation: 1e-9,
  perFriction: false,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
})
