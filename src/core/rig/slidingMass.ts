import type { MetrePerSecond, Second } from '../terms/index.ts'
import type { Oscillator } from './stickSlipOscillator.ts'

/** One cycle of stick and slip found by stepping the mass through time. */
export interface SimulatedCycle {
  readonly stick: Second
  readonly slip: Second
}

/**
 * The last cycle of a mass that starts at rest and is dragged at `drive`, or undefined when it goes on sliding.
 * Slip is stepped with the classical fourth-order rule; its end is set by linear interpolation within the step.
 * The drag of the damper acts on the relative motion of mass and drive.
 */
export function simulateStickSlip(o: Oscillator, drive: MetrePerSecond, timeStep: Second): SimulatedCycle | undefined {
  if (!(timeStep > 0)) throw new RangeError(`timeStep must be positive, got ${timeStep} s`)
  const natural = Math.sqrt(o.stiffness / o.mass)
  const damping = 2 * o.dampingRatio * natural
  // Velocity u relative to the drive and its rate: both known at release (the mass is at rest, the net force is ΔF).
  const slip = slipDuration({ natural, damping, drive, rate: o.forceDrop / o.mass, timeStep })
  if (slip === undefined) return undefined
  // At the end of the slip the spring is as far under kinetic friction as the rate then tells; the drive winds it up again.
  const shortfall = -slip.endRate * o.mass
  return { stick: (o.forceDrop + shortfall) / (o.stiffness * drive), slip: slip.time }
}

interface Release {
  readonly natural: number
  readonly damping: number
  readonly drive: MetrePerSecond
  readonly rate: number
  readonly timeStep: Second
}

/** u'' + damping·u' + ω²u = 0 from u = −drive until u is −drive again; undefined when it never is within 100 periods. */
function slipDuration(r: Release): { time: Second; endRate: number } | undefined {
  const square = r.natural * r.natural
  const h = r.timeStep
  let u = -r.drive
  let w = r.rate
  const most = Math.ceil((200 * Math.PI) / r.natural / h)
  for (let i = 0; i < most; i++) {
    const a1 = -square * u - r.damping * w
    const w2 = w + (h / 2) * a1
    const a2 = -square * (u + (h / 2) * w) - r.damping * w2
    const w3 = w + (h / 2) * a2
    const a3 = -square * (u + (h / 2) * w2) - r.damping * w3
    const w4 = w + h * a3
    const a4 = -square * (u + h * w3) - r.damping * w4
    const nextU = u + (h / 6) * (w + 2 * w2 + 2 * w3 + w4)
    const nextW = w + (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4)
    if (i > 0 && nextU <= -r.drive) {
      const share = (u + r.drive) / (u - nextU)
      return { time: (i + share) * h, endRate: w + share * (nextW - w) }
    }
    u = nextU
    w = nextW
  }
  return undefined
}
