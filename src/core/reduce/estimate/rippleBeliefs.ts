import { assumedTilt } from '../defaults.ts'
import type { Learned } from './learned.ts'
import { pooledRipple, turnsForRipple } from './recordRipple.ts'
import type { RippleBelief } from './stepFriction.ts'

/** What the other steps say of the ripple; an assumed tilt where no step of the record holds a turn. */
export function beliefsOf(
  learned: Learned,
  index: number,
): { beliefs: (RippleBelief | undefined)[]; tiltAssumed: boolean } {
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
