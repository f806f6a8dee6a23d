import { type FixtureGeometry, rotationFromSpeed, torquePerFriction } from '../fixture/index.ts'
import type { MetrePerSecond, Newton } from '../terms/index.ts'
import { bitOf } from './planLimit.ts'
import { contactAt, type PlannedContact, pressureLimits } from './plannedContact.ts'
import { independentReadings, tiltBias } from './pointUncertainty.ts'
import type { ExpectedNoise, PlanQuestion } from './question.ts'
import { gapsOf, stepTime, turnTime } from './turnBudget.ts'

/** All of a question that its windows and points share. */
export interface PlanBasis {
  readonly question: PlanQuestion
  readonly geometry: FixtureGeometry
  readonly contact: PlannedContact
  readonly noise: ExpectedNoise
}

/** What a speed alone decides. */
export interface SpeedLine {
  readonly mask: Uint16Array
  readonly readings: Float64Array
  /** Largest shift of friction by the assumed tilt. */
  readonly tilt: Float64Array
  /** Slid when a sweep from the slowest speed asked for has reached this one, conditioning included. */
  readonly distance: Float64Array
}

/** Speed limits of the rig, time of the sweep from here to the fastest, distance of the sweep up to here. */
export function speedLine(speeds: Float64Array, { question, geometry, noise }: PlanBasis): SpeedLine {
  const { ask, rig } = question
  const { lever } = geometry
  const { floor = 0, ceiling = Number.POSITIVE_INFINITY } = rig.angularVelocity
  const dwell = { turns: ask.turns, least: ask.leastDwell, most: ask.mostDwell }
  const ways = ask.direction === 'upAndDown' ? 2 : 1
  const n = speeds.length
  const line = {
    mask: new Uint16Array(n),
    readings: new Float64Array(n),
    tilt: new Float64Array(n),
    distance: new Float64Array(n),
  }
  const sums = sumsAlong(speeds, (speed) => stepTime(speed, lever, dwell), ask)
  for (let i = 0; i < n; i++) {
    const speed = speeds[i]
    const rotation = rotationFromSpeed(geometry, speed)
    const seconds = stepTime(speed, lever, dwell)
    line.readings[i] = independentReadings(seconds, noise.correlationTime)
    line.tilt[i] = tiltBias(seconds / turnTime(speed, lever), noise.tilt)
    line.distance[i] = ask.conditioningDistance + ways * sums.distance[i]
    let mask = 0
    if (rotation < floor) mask |= bitOf('speedTooLow')
    if (rotation > ceiling) mask |= bitOf('speedTooHigh')
    if (ways * sums.time[i] > ask.mostTime) mask |= bitOf('time')
    if (line.distance[i] > ask.mostDistance) mask |= bitOf('distance')
    line.mask[i] = mask
  }
  return line
}

/** Time of a sweep that begins at each speed, distance of one that ends there: what a narrower sweep would cost. */
function sumsAlong(
  speeds: Float64Array,
  timeOf: (speed: MetrePerSecond) => number,
  { slowest, fastest, perDecade }: PlanQuestion['ask'],
): { readonly time: Float64Array; readonly distance: Float64Array } {
  const time = new Float64Array(speeds.length)
  const distance = new Float64Array(speeds.length)
  for (let i = 0; i < speeds.length; i++) {
    const speed = speeds[i]
    const rest = gapsOf(Math.min(speed, fastest), fastest, perDecade)
    const onwards = rest === 0 ? 1 : (fastest / Math.min(speed, fastest)) ** (1 / rest)
    for (let k = 0, step = speed; k <= rest; k++, step *= onwards) time[i] += timeOf(step)
    const past = gapsOf(Math.min(slowest, speed), speed, perDecade)
    const back = past === 0 ? 1 : (Math.min(slowest, speed) / speed) ** (1 / past)
    for (let k = 0, step = speed; k <= past; k++, step *= back) distance[i] += step * timeOf(step)
  }
  return { time, distance }
}

/** What a load alone decides. */
export interface ForceLine {
  readonly mask: Uint16Array
  readonly load: Float64Array
  /** Torque per friction, N·m. */
  readonly perFriction: Float64Array
  /** Distance at which wear has become too much. */
  readonly wearDistance: Float64Array
  /** Peak pressure, or the mean one of flat faces; 0 where nothing is known. */
  readonly pressure: Float64Array
  readonly contactRadius: Float64Array
  readonly approach: Float64Array
}

/** Force limits of the rig, contact against what the pair bears, tilting moment, wear. */
export function forceLine(forces: Float64Array, basis: PlanBasis): ForceLine {
  const { question, geometry, contact } = basis
  const { rig, ask, pair } = question
  const limits = pressureLimits(question)
  const { floor = 0, ceiling = Number.POSITIVE_INFINITY } = rig.axialForce
  const n = forces.length
  const column = (): Float64Array => new Float64Array(n)
  const line = {
    mask: new Uint16Array(n),
    load: column(),
    perFriction: column(),
    wearDistance: column(),
    pressure: column(),
    contactRadius: column(),
    approach: column(),
  }
  for (let j = 0; j < n; j++) {
    const force = forces[j]
    const at = contactAt(contact, geometry, force)
    const pressure = at.peakPressure ?? at.meanPressure ?? 0
    const thickness = pair.lower.thickness ?? Number.POSITIVE_INFINITY
    line.load[j] = at.load
    line.perFriction[j] = torquePerFriction(geometry, force)
    line.pressure[j] = pressure
    line.contactRadius[j] = at.contactRadius ?? 0
    line.approach[j] = at.approach ?? 0
    line.wearDistance[j] = wearDistance(force, at, basis)
    let mask = 0
    if (force < floor) mask |= bitOf('forceTooLow')
    if (force > ceiling) mask |= bitOf('forceTooHigh')
    if (pressure > (limits.peak ?? Number.POSITIVE_INFINITY)) mask |= bitOf('pressure')
    if (at.peakPressure !== null && pressure > (limits.edge ?? Number.POSITIVE_INFINITY)) mask |= bitOf('edgeTension')
    if (line.approach[j] > ask.indentationShare * thickness) mask |= bitOf('coating')
    if (force * geometry.tiltingArm > (ask.mostTiltingMoment ?? Number.POSITIVE_INFINITY))
      mask |= bitOf('tiltingMoment')
    line.mask[j] = mask
  }
  return line
}

/** Sliding distance after which the scar is as wide as allowed, or the track too deep in its coating; infinite where no rate is known. */
export function wearDistance(
  force: Newton,
  at: ReturnType<typeof contactAt>,
  { question, geometry, contact }: PlanBasis,
): number {
  const { bears, ask, pair } = question
  if (contact.kind !== 'point' || at.contactRadius === null || !(force > 0)) return Number.POSITIVE_INFINITY
  const scar = 2 * at.contactRadius * ask.scarShare
  // Cap of a small scar, πd⁴/64R; the exact cap agrees within 0.1 % up to a scar of 0.1 R.
  const capVolume = (Math.PI * scar ** 4) / (64 * contact.bodyRadius)
  const upper = capVolume / ((bears.upper.wearRate ?? 0) * at.load)
  const track = 2 * Math.PI * geometry.lever * 2 * at.contactRadius
  const depth = ask.indentationShare * (pair.lower.thickness ?? Number.POSITIVE_INFINITY)
  const lower = (track * depth) / ((bears.lower.wearRate ?? 0) * at.load * geometry.contacts)
  return Math.min(upper, Number.isNaN(lower) ? Number.POSITIVE_INFINITY : lower)
}
