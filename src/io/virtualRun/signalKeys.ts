import type { Dimension } from '../../core/quantity/index.ts'
import type { QuantityKey, Section } from '../setup/keyKinds.ts'

const size = (dimension: Dimension, about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension,
  range: { least: 0, most: 1e3 },
  example,
  about,
})

const either = (dimension: Dimension, about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension,
  range: { least: -1e3, most: 1e3 },
  example,
  about,
})

/** Noise of one channel. */
export const noiseOfChannel = (of: string, dimension: Dimension, example: string): Section => ({
  is: 'section',
  about: `Noise of ${of}. Leave out for none.`,
  keys: {
    white: size(dimension, 'Standard deviation of the part that is new in every row.', example),
    correlated: size(dimension, 'Standard deviation of the part that remembers.', example),
    correlation: {
      is: 'quantity',
      dimension: 'ratio',
      range: { least: 0, below: 1 },
      example: '0.6',
      default: '0',
      about: 'Correlation of the remembering part from one row to the next.',
    },
    resolution: size(dimension, 'Step of the converter.', example),
  },
})

/** Noise of the sensed channels. */
export const noiseKeys: Section = {
  is: 'section',
  about: 'Noise of the channels.',
  keys: {
    torque: noiseOfChannel('torque', 'torque', '4 µN·m'),
    axialForce: noiseOfChannel('axial force', 'force', '5 mN'),
    gap: noiseOfChannel('gap', 'length', '0.1 µm'),
    temperature: noiseOfChannel('temperature', 'temperatureDifference', '0.02 K'),
    angularVelocity: noiseOfChannel('speed', 'angularVelocity', '1e-5 rad/s'),
  },
}

/** What the rig adds to the friction by itself. */
export const signalKeys: Section = {
  is: 'section',
  about: 'What the rig adds to the friction by itself. Inertia, stiffness and torque ceiling stand under "rig".',
  keys: {
    riseTime: {
      is: 'quantity',
      dimension: 'time',
      range: { least: 0, most: 1e4 },
      example: '0.25 s',
      default: '0 s',
      about: 'Time constant with which the speed nears its target.',
    },
    residualTorque: either('torque', 'Torque without contact at rest.', '3 µN·m'),
    dragAtOneRadianPerSecond: either('torque', 'Torque without contact that each rad/s adds.', '0.4 µN·m'),
    forceZero: either('force', 'Axial force that reads without contact.', '20 mN'),
    forceDriftPerHour: either('force', 'By how much that zero drifts in an hour.', '50 mN'),
  },
}
