import { printQuantity } from '../../quantity/index.ts'
import type { PeakCause, PeakEvidence, Setup, Start } from '../../terms/index.ts'
import type { RampFound } from './rampStart.ts'
import type { SpeedStartFound } from './speedStart.ts'

type Peak = Start['peak']

/** Share of a peak's height over the level from which on inertia is its cause. Common practice, no source. */
export const inertiaShare = 0.5

/** A peak has to stand over its level by so many standard uncertainties. */
const clearPeak = 4

/** Stiffnesses that agree within this share are one. */
const sameStiffness = 0.3

/** The motor counts as up to speed from this share of it on. */
const upToSpeed = 0.95

const torque = (value: number): string => printQuantity(value, 'torque', { digits: 3 })
const angle = (value: number): string => printQuantity(value, 'angle', { digits: 2 })
const share = (value: number): string => printQuantity(value, 'ratio', { digits: 2, unit: '%' })

/** Is the peak of a start at an imposed speed static friction, wind-up or inertia? Each cause with what speaks for or against it. */
export function speedPeak(found: SpeedStartFound, { rig }: Setup): Peak {
  const height = found.peak - found.level
  const unsure = Math.hypot(found.levelUncertainty, found.deviation / Math.sqrt(found.peakRows))
  // The highest of many rows stands over the level by chance too: by about √(2 ln n) deviations (Cramér 1946).
  const byChance = unsure * Math.sqrt(2 * Math.log(Math.max(2, found.rowsToPeak * 2)))
  const stands = height > byChance + clearPeak * found.levelUncertainty && height > clearPeak * unsure
  const evidence = [heightEvidence(found, height, stands), windUpEvidence(found, rig.torsionalStiffness)]
  const inertial = rig.inertia === undefined ? undefined : rig.inertia * Math.max(0, found.accelerationAtPeak)
  evidence.push(inertiaEvidence(found, { height, stands, inertial }))
  evidence.push(motionEvidence(found, rig.torsionalStiffness))
  const cause = causeOf(found, { height, stands, inertial })
  return { cause, sentence: sentences[cause], evidence }
}

interface Height {
  readonly height: number
  readonly stands: boolean
  /** I·dΩ/dt at the peak; undefined where nobody knows the inertia. */
  readonly inertial: number | undefined
}

function causeOf(found: SpeedStartFound, { height, stands, inertial }: Height): PeakCause {
  if (!stands) return found.stiffness === null ? 'noPeak' : 'windUp'
  if (inertial !== undefined && inertial > inertiaShare * height) return 'inertia'
  if (inertial === undefined && found.speedShare < upToSpeed) return 'cannotTell'
  return 'staticFriction'
}

const sentences: Readonly<Record<PeakCause, string>> = {
  staticFriction: 'The contact held up to the peak and then gave way: the peak is static friction.',
  windUp: 'Torque rose to its level as the shaft wound up, and never stood over it: no static friction is seen.',
  inertia: 'The peak is what it takes to speed the shaft up: it is no friction.',
  noPeak: 'Torque reached its level at once and never stood over it: there is no peak.',
  cannotTell:
    'The motor was still speeding up at the peak, and the setup does not say the inertia: the record cannot tell.',
}

const heightEvidence = (found: SpeedStartFound, height: number, stands: boolean): PeakEvidence => ({
  cause: 'staticFriction',
  speaks: stands ? 'for' : 'against',
  sentence: stands
    ? `The peak of ${torque(found.peak)} stands ${torque(height)} over the level of ${torque(found.level)}, more than noise explains.`
    : `The highest torque, ${torque(found.peak)}, stands no further over the level of ${torque(found.level)} than noise explains.`,
})

function windUpEvidence(found: SpeedStartFound, given: number | undefined): PeakEvidence {
  const { stiffness } = found
  if (stiffness === null) {
    const sentence = 'Torque rises within too few rows to tell a stiffness.'
    return { cause: 'windUp', speaks: 'silent', sentence }
  }
  const seen = `Torque rises by ${printQuantity(stiffness.value, 'torsionalStiffness', { digits: 3 })}`
  if (given === undefined) {
    return { cause: 'windUp', speaks: 'for', sentence: `${seen}; the setup does not say the rig's stiffness.` }
  }
  const ratio = stiffness.value / given
  const same = Math.abs(ratio - 1) < sameStiffness
  const sentence = same
    ? `${seen}, as the rig's own stiffness has it: up to the peak the shaft winds up.`
    : `${seen}, ${share(ratio)} of the rig's own stiffness: ${ratio < 1 ? 'the contact gives way as well' : 'the motor angle is not all of it'}.`
  return { cause: 'windUp', speaks: same ? 'for' : 'against', sentence }
}

function inertiaEvidence(found: SpeedStartFound, { height, stands, inertial }: Height): PeakEvidence {
  if (inertial === undefined) {
    const sentence = 'The setup does not say the inertia, so its part of the peak is not known.'
    return { cause: 'inertia', speaks: 'silent', sentence }
  }
  const part = stands ? ` of the ${torque(height)} over the level` : ''
  const speaks = stands && inertial > inertiaShare * height ? 'for' : 'against'
  return {
    cause: 'inertia',
    speaks,
    sentence: `Speeding up took ${torque(inertial)}${part} at the peak; the motor had ${share(found.speedShare)} of its speed there.`,
  }
}

function motionEvidence(found: SpeedStartFound, given: number | undefined): PeakEvidence {
  const stiffness = given ?? found.stiffness?.value
  if (stiffness === undefined) {
    return {
      cause: 'staticFriction',
      speaks: 'silent',
      sentence:
        'Neither the setup nor the rise tells the stiffness, so how far the contact had slid at the peak is not known.',
    }
  }
  const wound = found.peak / stiffness
  const slid = found.angleToPeak - wound
  const held = slid < 0.5 * wound
  return {
    cause: 'staticFriction',
    speaks: held ? 'for' : 'against',
    sentence: `At the peak the motor had turned ${angle(found.angleToPeak)}, of which winding up takes ${angle(wound)}${held ? ': the contact had hardly slid' : ': the contact had slid before'}.`,
  }
}

/** The same for a torque ramp. */
export function rampPeak(found: RampFound, inertia: number | undefined): Peak {
  const before: PeakEvidence = {
    cause: 'windUp',
    speaks: found.moved ? 'against' : 'for',
    sentence: `Before motion the angle followed the torque: twist ${angle(found.elastic)}, creep ${angle(found.creep)}, noise of the encoder ${angle(found.angleNoise)}.`,
  }
  const after: PeakEvidence = {
    cause: 'staticFriction',
    speaks: found.moved ? 'for' : 'against',
    sentence: found.moved
      ? `From ${torque(found.heldTorque)} on the angle ran away by ${angle(found.slid)} beyond twist and creep, over the ${angle(found.threshold)} that count as motion.`
      : `Up to ${torque(found.heldTorque)} the angle went no further beyond twist and creep than ${angle(Math.max(0, found.slid))}; ${angle(found.threshold)} would count as motion.`,
  }
  const shaft: PeakEvidence = {
    cause: 'inertia',
    speaks: 'against',
    sentence: `The shaft stood until then, so nothing was speeded up${inertia === undefined ? '' : ' and inertia took no torque'}.`,
  }
  return found.moved
    ? {
        cause: 'staticFriction',
        sentence: 'The contact held until the angle ran away: this is static friction.',
        evidence: [after, before, shaft],
      }
    : {
        cause: 'noPeak',
        sentence: 'The contact did not break away: what the angle shows is twist, creep and noise.',
        evidence: [after, before],
      }
}
