import type { KilogramMetreSquared, Newton, NewtonMetre, NewtonMetrePerRadian, Second } from '../terms/index.ts'
import type { SensorNoise } from './sensorNoise.ts'

/** Channels that a sensor makes, each with its own noise. */
export type SensedChannel = 'angularVelocity' | 'torque' | 'axialForce' | 'gap' | 'temperature'

/** Reading without contact: level + perSpeed·Ω. */
export interface ResidualTorque {
  readonly level: NewtonMetre
  /** N·m·s */
  readonly perSpeed: number
}

/** Reading of the axial force without contact: level + perSecond·t. */
export interface ForceZero {
  readonly level: Newton
  /** N/s */
  readonly perSecond: number
}

/** What the rig adds to the friction by itself. Undefined means that it adds nothing of the kind. */
export interface VirtualRig {
  /** Largest torque of either sign; readings are cut there. The speed is taken to hold all the same. */
  readonly torqueCeiling?: NewtonMetre
  readonly noise: Readonly<Partial<Record<SensedChannel, SensorNoise>>>
  /** Time constant with which the speed nears its target; 0 reaches it at once. */
  readonly riseTime: Second
  readonly inertia?: KilogramMetreSquared
  readonly torsionalStiffness?: NewtonMetrePerRadian
  readonly residualTorque?: ResidualTorque
  readonly forceZero?: ForceZero
}
