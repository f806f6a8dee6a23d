import { linearInterpolant, monotoneInterpolant } from '../numeric/index.ts'
import type { MetrePerSecond, Ratio, SharedSource } from '../terms/index.ts'
import type { ReplicatePoint } from './replicate.ts'

/** A replicate at any speed between its slowest and its fastest step. */
export interface CurveOverSpeed {
  readonly slowest: MetrePerSecond
  readonly fastest: MetrePerSecond
  lnFriction(speed: MetrePerSecond): number
  /** Own standard uncertainty as a share of friction. */
  own(speed: MetrePerSecond): Ratio
  shared(source: SharedSource, speed: MetrePerSecond): Ratio
}

/** Steps whose speeds lie nearer than this are one speed, driven up and down or twice. */
const oneSpeed = 1.02

/**
 * The curve through the steps of a replicate: smooth in ln μ over ln v, without bends that the steps have not
 * (`monotoneInterpolant`). Steps at one speed are averaged first. Throws RangeError without points.
 */
export function curveThrough(points: readonly ReplicatePoint[]): CurveOverSpeed {
  const steps = merged(points)
  const lnSpeeds = steps.map(({ slidingSpeed }) => Math.log(slidingSpeed))
  const last = steps.length - 1
  const held = (speed: number): number => Math.min(Math.max(Math.log(speed), lnSpeeds[0]), lnSpeeds[last])
  const through = (values: readonly number[], how = linearInterpolant): ((speed: number) => number) => {
    if (last === 0) return () => values[0]
    const at = how(lnSpeeds, values)
    return (speed) => at(held(speed))
  }
  const level = through(
    steps.map(({ friction }) => Math.log(friction)),
    monotoneInterpolant,
  )
  return {
    slowest: steps[0].slidingSpeed,
    fastest: steps[last].slidingSpeed,
    lnFriction: level,
    own: (speed) => ownBetween(lnSpeeds, steps, held(speed)),
    shared: (source, speed) => through(steps.map(({ shared }) => shared[source] ?? 0))(speed),
  }
}

/** The parts of two neighbouring steps are independent, so between them they add in squares. */
function ownBetween(lnSpeeds: readonly number[], steps: readonly ReplicatePoint[], at: number): Ratio {
  const share = (i: number): number => steps[i].own / steps[i].friction
  const next = lnSpeeds.findIndex((lnSpeed) => lnSpeed >= at)
  if (next <= 0) return share(0)
  const part = (at - lnSpeeds[next - 1]) / (lnSpeeds[next] - lnSpeeds[next - 1])
  return Math.hypot((1 - part) * share(next - 1), part * share(next))
}

/** One step for each speed, in rising order. */
function merged(points: readonly ReplicatePoint[]): ReplicatePoint[] {
  for (const { slidingSpeed, friction } of points) {
    if (!(slidingSpeed > 0 && friction > 0)) {
      throw new RangeError(`speed and friction must be above zero, got ${slidingSpeed} m/s and ${friction}`)
    }
  }
  const sorted = points.toSorted((a, b) => a.slidingSpeed - b.slidingSpeed)
  if (sorted.length === 0) throw new RangeError('a replicate needs a point, got none')
  const groups: ReplicatePoint[][] = []
  for (const point of sorted) {
    const group = groups.at(-1)
    if (group !== undefined && point.slidingSpeed < group[0].slidingSpeed * oneSpeed) group.push(point)
    else groups.push([point])
  }
  return groups.map(together)
}

function together(group: readonly ReplicatePoint[]): ReplicatePoint {
  if (group.length === 1) return group[0]
  const mean = (of: (point: ReplicatePoint) => number): number =>
    group.reduce((sum, point) => sum + of(point), 0) / group.length
  return {
    slidingSpeed: Math.exp(mean(({ slidingSpeed }) => Math.log(slidingSpeed))),
    friction: Math.exp(mean(({ friction }) => Math.log(friction))),
    own: Math.hypot(...group.map(({ own }) => own)) / group.length,
    shared: group[0].shared,
  }
}
