import { type FixtureGeometry, normalLoad, slidingSpeed, torqueFromFriction } from '../fixture/index.ts'
import type { Random } from '../numeric/index.ts'
import type { Metre, Newton, NewtonMetre, Radian, Ratio, Second } from '../terms/index.ts'
import { failedFriction } from './coatingFailure.ts'
import { conditionsFactor } from './conditions.ts'
import { gapSwing } from './gapRunOut.ts'
import { viscosityFactor } from './liquidChange.ts'
import { contactShare } from './lostContact.ts'
import type { Moment } from './moment.ts'
import { tiltedFriction } from './plateTilt.ts'
import { runningInFactor } from './runningIn.ts'
import { createStickSlip } from './stickSlip.ts'
import { rippleFactor } from './turnRipple.ts'
import type { VirtualRun } from './virtualRun.ts'
import { wornGap } from './wear.ts'
import { createWindUp } from './windUp.ts'
import { wornSpotFactor } from './wornSpot.ts'

/** What truly acts at the contact, before any sensor. */
export interface TrueContact {
  readonly axialForce: Newton
  /** Torque in the shaft from friction alone. */
  readonly torque: NewtonMetre
  /** Gap less its reading at first contact. */
  readonly gap: Metre
}

/** The contact from first touch on: it remembers distance, wear, wind-up and the phase of stick and slip. */
export function createContact(
  run: VirtualRun,
  geometry: FixtureGeometry,
  random: Random,
): (moment: Moment) => TrueContact {
  const { disturbances: d, rig, sheet } = run
  const windUp = rig.torsionalStiffness === undefined ? undefined : createWindUp(rig.torsionalStiffness)
  const shaft = { stiffness: rig.torsionalStiffness, inertia: rig.inertia, lever: geometry.lever }
  const stickSlip = d.stickSlip && createStickSlip(d.stickSlip, shaft, random)
  const frictionAt = createFriction(run)
  let distance = 0
  let work = 0

  const gapAt = (angle: Radian): Metre =>
    (d.gapRunOut ? gapSwing(d.gapRunOut, angle) : 0) - (d.wear ? wornGap(d.wear, run.fixture, { distance, work }) : 0)

  return (moment) => {
    if (moment.step.kind === 'blank') {
      return { axialForce: 0, torque: 0, gap: sheet.lift + gapAt(moment.angle) }
    }
    const twistBefore = windUp?.twist() ?? 0
    const angle = moment.angle - twistBefore
    const axialForce =
      sheet.axialForce *
      rippleFactor(d.forceRipple ?? [], angle) *
      contactShare(d.lostContact ?? [], moment.step.number, moment.inStep)
    const speed = slidingSpeed(geometry, Math.abs(moment.speed))
    let friction = frictionAt({ speed, angle, distance, time: moment.time, direction: moment.speed < 0 ? -1 : 1 })
    if (stickSlip) friction *= stickSlip(speed, friction * geometry.loadFactor * axialForce, moment.interval)
    const held = axialForce > 0 ? torqueFromFriction(geometry, friction, axialForce) : 0
    const sliding = Math.sign(moment.speed) * held
    const torque = windUp ? windUp.turn(moment.turned, sliding) : sliding
    const slid = Math.abs(moment.turned - (windUp?.twist() ?? 0) + twistBefore) * geometry.lever
    distance += slid
    work += normalLoad(geometry, axialForce) * slid
    return { axialForce, torque, gap: gapAt(angle) }
  }
}

interface Sliding {
  readonly speed: number
  readonly angle: Radian
  readonly distance: Metre
  readonly time: Second
  readonly direction: 1 | -1
}

/** Friction with all that rides on it but stick and slip. */
function createFriction(run: VirtualRun): (at: Sliding) => Ratio {
  const { frictionRipple = [], runningIn, tilt, coatingFailure, liquidChange, wornSpot } = run.disturbances
  const { axialForce, temperature } = run.sheet
  const factor = run.conditions === undefined ? 1 : conditionsFactor(run.conditions, axialForce, temperature)
  return ({ speed, angle, distance, time, direction }) => {
    let friction = run.friction.at(liquidChange ? speed * viscosityFactor(liquidChange, time) : speed) * factor
    if (!(friction >= 0)) throw new RangeError(`friction law gives ${friction} at ${speed} m/s`)
    if (runningIn) friction *= runningInFactor(runningIn, distance)
    if (coatingFailure) friction = failedFriction(coatingFailure, friction, distance)
    if (wornSpot) friction *= wornSpotFactor(wornSpot, angle, distance)
    if (frictionRipple.length > 0) friction *= rippleFactor(frictionRipple, angle)
    return tilt ? tiltedFriction(tilt, { friction, angle, direction }) : friction
  }
}
