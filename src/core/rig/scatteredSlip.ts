import type { Random } from '../numeric/index.ts'
import type { Newton, Ratio, Second } from '../terms/index.ts'

/** How one cycle of stick and slip goes on: loading at a rate, and a slip that takes some time. */
export interface Loading {
  /** Friction gained per second while the contact stands. */
  readonly rate: number
  /** Static less kinetic friction of a typical cycle. */
  readonly drop: Newton
  /** rad/s; undefined where a slip takes no time. */
  readonly natural?: number
}

/** Friction less its kinetic value, `interval` after the last call. */
export type SlipDeviation = (loading: Loading, interval: Second) => Newton

/** No cycle is drawn further from the typical one than so many standard deviations. */
const farthest = 3

/**
 * Stick and slip whose drop is drawn anew for every cycle, as the true contact meets another patch each time: the spring is loaded from
 * where the last slip left it until this cycle's static friction is reached, then swings half a period to as far below. Starts half way up.
 */
export function createScatteredSlip(scatter: Ratio, random: Random): SlipDeviation {
  if (!(scatter > 0 && scatter < 1 / farthest)) {
    throw new RangeError(`scatter must be more than 0 and under a third, got ${scatter}`)
  }
  const draw = (): Ratio => 1 + scatter * Math.max(-farthest, Math.min(farthest, random.normal()))
  let level = 0
  let factor = draw()
  let slipping: number | undefined
  return ({ rate, drop, natural }, interval) => {
    let left = interval
    while (left > 0) {
      const top = factor * drop
      if (slipping === undefined) {
        const wait = (top - level) / rate
        if (wait > left) {
          level += rate * left
          return level
        }
        left -= Math.max(0, wait)
        slipping = 0
      }
      // The swing ends where the mass stands still again: at the level −top, with the speed of the drive.
      const push = natural === undefined ? 0 : rate / natural
      const duration = natural === undefined ? 0 : (2 / natural) * (Math.PI - Math.atan2(top, push))
      if (natural !== undefined && slipping + left < duration) {
        slipping += left
        return top * Math.cos(natural * slipping) + push * Math.sin(natural * slipping)
      }
      left -= duration - slipping
      slipping = undefined
      level = -top
      factor = draw()
    }
    return level
  }
}
