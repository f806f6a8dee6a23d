import type { QuantityKey, Section } from '../setup/keyKinds.ts'
import { noiseOfChannel } from './signalKeys.ts'
import { tableKeys } from './tableKeys.ts'

const needed = (dimension: QuantityKey['dimension'], about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension,
  range: { above: 0, most: 1e9 },
  required: true,
  example,
  about,
})

const optional = (dimension: QuantityKey['dimension'], about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension,
  range: { least: 0, most: 1e9 },
  example,
  about,
})

/** What a virtual run of torque ramps says beside its setup. */
export const breakawayKeys: Section = {
  is: 'section',
  about: 'Torque ramps from rest after set dwells, and how their record is put down.',
  keys: {
    seed: {
      is: 'quantity',
      dimension: 'count',
      range: { least: 0, most: Number.MAX_SAFE_INTEGER },
      example: '1',
      default: '1',
      about: 'Seed of the noise; the same seed gives the same record.',
    },
    breakaway: {
      is: 'section',
      required: true,
      about: 'The ramps, and the static friction that truly acts: level + growth·ln(1 + t/ageingTime).',
      keys: {
        dwells: {
          is: 'text',
          required: true,
          example: '1 s; 10 s; 100 s',
          about: 'Times at rest before the ramps, in their order, separated by semicolons.',
        },
        mostTorque: needed('torque', 'Torque at which a ramp ends.', '50 mN·m'),
        rampTime: needed('time', 'Time from no torque to that one.', '20 s'),
        samplingRate: needed('frequency', 'Rows per second.', '50 Hz'),
        level: needed('ratio', 'Static friction without rest.', '0.2'),
        growth: optional('ratio', 'Growth per e-fold of the time at rest.', '0.01'),
        ageingTime: { ...optional('time', 'Time at rest at which growth sets in.', '1 s'), default: '1 s' },
        scatter: optional('ratio', 'Standard deviation from start to start.', '0.002'),
        kinetic: needed('ratio', 'Friction once it slides.', '0.15'),
        creep: optional('ratio', 'Creep at the end of a ramp as a share of the twist.', '2 %'),
        stopAngle: { ...optional('angle', 'Angle slid after which the rig stops.', '50 mrad'), default: '50 mrad' },
        fastest: { ...optional('angularVelocity', 'Fastest that the rig turns.', '1 rad/s'), default: '1 rad/s' },
      },
    },
    noise: {
      is: 'section',
      about: 'Noise of the channels.',
      keys: {
        torque: noiseOfChannel('torque', 'torque', '4 µN·m'),
        axialForce: noiseOfChannel('axial force', 'force', '5 mN'),
        angle: noiseOfChannel('the angle', 'angle', '2 µrad'),
      },
    },
    table: tableKeys,
  },
}
