import { mean } from '../../stats/index.ts'
import { aloneStep } from './aloneStep.ts'
import { atOneSpeed, localSlopes, type PlainPoint } from './atOneSpeed.ts'
import { fewestKept, forceRippleOf, learn } from './learned.ts'
import { meanInflation } from './meanInflation.ts'
import type { NoiseCorrelation, SharedNoise } from './noiseCorrelation.ts'
import type { RecordRippleFit } from './recordRipple.ts'
import { beliefsOf } from './rippleBeliefs.ts'
import { settledFrom } from './settled.ts'
import { recordShape, shaped } from './shaped.ts'
import { stepFriction } from './stepFriction.ts'
import type { StepResult } from './stepResult.ts'
import type { StepRows } from './stepRows.ts'
import { warmUps } from './warmUps.ts'

/** Friction of all steps, and what the record shows as a whole. */
export interface RecordFriction {
  readonly steps: readonly StepResult[]
  readonly ripple: RecordRippleFit
  readonly noise: SharedNoise
}

interface FrictionOptions {
  readonly settleTolerance: number
  readonly orders: readonly number[]
  readonly cutWarmUp: boolean
  /** First rows of steps from which nothing is cut: a person moved their windows. */
  readonly asTheyAre?: ReadonlySet<number>
}

/**
 * Friction of all steps of a record together: first a round to learn ripple and noise from settled rows, then the
 * warm-up cut with the ripple taken off, then the estimate of each step with what the others say.
 */
export function recordFriction(
  raw: readonly StepRows[],
  { settleTolerance, orders, cutWarmUp, asTheyAre }: FrictionOptions,
): RecordFriction {
  const held = raw.map(({ step }) => !cutWarmUp || asTheyAre?.has(step.from) === true)
  const settled = raw.map((rows) => (cutWarmUp ? settledFrom(rows.speed, rows.step.target, settleTolerance) : 0))
  const starts = settled.map((from, s) => (held[s] ? 0 : (from ?? Math.floor(raw[s].speed.length / 5))))
  // Noise and ripple are learned where no warm-up is left, or its trace would pass for correlation.
  const late = starts.map((from, s) => (held[s] ? from : Math.max(from, Math.floor(raw[s].speed.length / 3))))
  const all = cutWarmUp ? referred(raw, late) : raw
  const first = learn(all, late, { orders, forceRipple: [] })
  const warm = cutWarmUp ? warmUps(all, { starts, late, first }) : []
  const cut = starts.map((from, s) => from + (held[s] ? 0 : (warm[s] ?? 0)))
  const second = learn(all, cut, { orders, forceRipple: forceRippleOf(first) })
  const speeds = raw.map((rows, s) => speedFrom(rows, cutWarmUp ? late[s] : cut[s]))
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
  const { orders: shown } = second.ripple
  if (second.usable.length < 2) {
    return { steps: steps.map((step) => aloneStep(step, shown)), ripple: second.ripple, noise: second.noise }
  }
  const shape = recordShape(steps, shown)
  const said = shape === undefined ? steps : steps.map((step) => shaped(step, shape))
  return { steps: said, ripple: second.ripple, noise: second.noise }
}

/** Mean speed from a row on; the target where no row is left. */
function speedFrom({ speed, step }: StepRows, from: number): number {
  const kept = speed.subarray(Math.min(from, Math.max(0, speed.length - 1)))
  return kept.length === 0 ? Math.abs(step.target) : mean(kept)
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
