import type { MetrePerSecond, Second } from '../terms/index.ts'

/** In which order the speeds of a range come. `upAndDown` visits the fastest twice. */
export type SpeedDirection = 'up' | 'down' | 'upAndDown'

/**
 * Sliding speeds of a run. A listed speed may be negative: the fixture then turns backwards.
 * A ramp goes through the speeds without a stop and counts as one step each way.
 */
export type SpeedPlan =
  | { readonly kind: 'list'; readonly speeds: readonly MetrePerSecond[] }
  | {
      readonly kind: 'range'
      readonly slowest: MetrePerSecond
      readonly fastest: MetrePerSecond
      readonly perDecade: number
      readonly direction: SpeedDirection
    }
  | {
      readonly kind: 'ramp'
      readonly slowest: MetrePerSecond
      readonly fastest: MetrePerSecond
      /** Of one way. */
      readonly duration: Second
      readonly law: 'logarithmic' | 'linear'
      readonly direction: SpeedDirection
    }

/** Speed at the beginning and at the end of one step; equal unless it is a ramp. */
export type SpeedSpan = readonly [begins: MetrePerSecond, ends: MetrePerSecond]

/** The steps that a plan asks for. A range is divided evenly in log speed, as near to `perDecade` as whole steps allow. */
export function speedSpans(plan: SpeedPlan): readonly SpeedSpan[] {
  if (plan.kind === 'list') return plan.speeds.map((speed) => [speed, speed])
  if (!(plan.slowest > 0 && plan.fastest >= plan.slowest)) {
    throw new RangeError(`speeds must rise from above zero, got ${plan.slowest} to ${plan.fastest} m/s`)
  }
  const spans = plan.kind === 'ramp' ? [[plan.slowest, plan.fastest] as const] : rangeSpans(plan)
  if (plan.direction === 'up') return spans
  const back = spans.map(([begins, ends]) => [ends, begins] as const).reverse()
  return plan.direction === 'down' ? back : [...spans, ...back]
}

function rangeSpans(plan: Extract<SpeedPlan, { kind: 'range' }>): readonly SpeedSpan[] {
  if (!(plan.perDecade > 0)) throw new RangeError(`perDecade must be positive, got ${plan.perDecade}`)
  const ratio = Math.log(plan.fastest / plan.slowest)
  const gaps = Math.max(1, Math.round((ratio / Math.LN10) * plan.perDecade))
  return Array.from({ length: gaps + 1 }, (_, i) => {
    const speed = i === gaps ? plan.fastest : plan.slowest * Math.exp((ratio * i) / gaps)
    return [speed, speed]
  })
}
