import { CurveAt } from './curveAt.ts'
import type { CurveMember, Reach } from './curveMember.ts'

/** Where friction is least. */
export interface Least {
  readonly lnSpeed: number
  readonly lnFriction: number
  /** `inside`: friction rises on both sides. `fastest`, `slowest`: it is least at that end of the data. */
  readonly where: 'slowest' | 'inside' | 'fastest'
}

/** Speeds among which the least is looked for before it is pinned down. */
const looks = 40

/** Least friction of a curve between the slowest and the fastest speed. */
export function leastFriction(member: CurveMember, parameters: Float64Array, reach: Reach): Least {
  const { lnSlowest, lnFastest } = reach
  const width = (lnFastest - lnSlowest) / (looks - 1)
  const lnSpeeds = Float64Array.from({ length: looks }, (_, i) => lnSlowest + i * width)
  const lnFriction = new Float64Array(looks)
  member.evaluate(parameters, { lnSpeeds, lnFriction })
  let best = 0
  for (let i = 1; i < looks; i++) if (lnFriction[i] < lnFriction[best]) best = i
  const at = new CurveAt(member, parameters)
  if (best === 0 && !(at.slope(lnSlowest) < 0)) {
    return { lnSpeed: lnSlowest, lnFriction: lnFriction[0], where: 'slowest' }
  }
  if (best === looks - 1 && !(at.slope(lnFastest) > 0)) {
    return { lnSpeed: lnFastest, lnFriction: lnFriction[looks - 1], where: 'fastest' }
  }
  const lnSpeed = turningPoint(
    at,
    Math.max(lnSlowest, lnSpeeds[best] - width),
    Math.min(lnFastest, lnSpeeds[best] + width),
  )
  return { lnSpeed, lnFriction: at.level(lnSpeed), where: 'inside' }
}

/** Zero of the slope between two speeds, Newton's method kept inside by halving. */
function turningPoint(at: CurveAt, from: number, to: number): number {
  let low = from
  let high = to
  let lnSpeed = (low + high) / 2
  for (let round = 0; round < 60 && high - low > 1e-8; round++) {
    const slope = at.slope(lnSpeed)
    if (slope < 0) low = lnSpeed
    else high = lnSpeed
    const newton = lnSpeed - slope / at.bend(lnSpeed)
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (Math.abs(next - lnSpeed) < 1e-8) return next
    lnSpeed = next
  }
  return lnSpeed
}
