import { randomFrom } from '../numeric/index.ts'
import type { Kelvin, Newton, NewtonMetre } from '../terms/index.ts'
import { huntingAt } from './hunting.ts'
import type { Moment } from './moment.ts'
import { createSensor } from './sensorNoise.ts'
import { thermalGap, warming } from './thermalDrift.ts'
import type { TrueContact } from './virtualContact.ts'
import type { SensedChannel, VirtualRig } from './virtualRig.ts'
import type { VirtualRun } from './virtualRun.ts'

/** Every channel has its own stream of chance, so that a change to one leaves the others as they were. */
const streams: Readonly<Record<SensedChannel, number>> = {
  angularVelocity: 1,
  torque: 2,
  axialForce: 3,
  gap: 4,
  temperature: 5,
}

/** Readings of the sensed channels at one moment. */
export type Readings = Readonly<Record<SensedChannel, number>>

/** Turns what truly acts into what the rig writes down: residuals, inertia, zeroes, drifts, noise, ceiling. */
export function createSensors(run: VirtualRun, seed: number): (moment: Moment, contact: TrueContact) => Readings {
  const { rig, sheet } = run
  const { thermalDrift: drift, hunting } = run.disturbances
  const sensor = (channel: SensedChannel) => createSensor(rig.noise[channel], randomFrom(seed, streams[channel]))
  const sense = {
    angularVelocity: sensor('angularVelocity'),
    torque: sensor('torque'),
    axialForce: sensor('axialForce'),
    gap: sensor('gap'),
    temperature: sensor('temperature'),
  }
  const ceiling = rig.torqueCeiling ?? Number.POSITIVE_INFINITY
  if (!(ceiling > 0)) throw new RangeError(`torqueCeiling must be positive, got ${ceiling} N·m`)
  return (moment, contact) => {
    const swing = hunting ? huntingAt(hunting, moment.time) : undefined
    const torque = sense.torque(contact.torque + torqueOfRig(rig, moment) + (swing?.torque ?? 0))
    const temperature: Kelvin = sheet.temperature + (drift ? warming(drift, moment.time) : 0)
    return {
      angularVelocity: sense.angularVelocity(moment.speed * (swing?.speed ?? 1)),
      torque: Math.max(-ceiling, Math.min(ceiling, torque)),
      axialForce: sense.axialForce(contact.axialForce + zeroAt(rig, moment)),
      gap: sense.gap(sheet.gap + contact.gap + (drift ? thermalGap(drift, moment.time) : 0)),
      temperature: sense.temperature(temperature),
    }
  }
}

/** Residual M₀ + M₁Ω and I·dΩ/dt. */
function torqueOfRig(rig: VirtualRig, moment: Moment): NewtonMetre {
  const residual = rig.residualTorque
  const inertial = (rig.inertia ?? 0) * moment.acceleration
  return residual === undefined ? inertial : inertial + residual.level + residual.perSpeed * moment.speed
}

const zeroAt = (rig: VirtualRig, moment: Moment): Newton =>
  rig.forceZero === undefined ? 0 : rig.forceZero.level + rig.forceZero.perSecond * moment.time
