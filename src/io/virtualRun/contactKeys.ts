import type { QuantityKey, Section } from '../setup/keyKinds.ts'

const share = (about: string, example: string, range: QuantityKey['range']): QuantityKey => ({
  is: 'quantity',
  dimension: 'ratio',
  range,
  required: true,
  example,
  about,
})

/** Standard deviation of the drop from cycle to cycle. */
export const scatterKey: QuantityKey = {
  is: 'quantity',
  dimension: 'ratio',
  range: { least: 0, most: 0.3 },
  example: '8 %',
  default: '0 %',
  about: 'Standard deviation of a fall from cycle to cycle, as a share of it.',
}

const length = (about: string, example: string, range: QuantityKey['range']): QuantityKey => ({
  is: 'quantity',
  dimension: 'length',
  range,
  required: true,
  example,
  about,
})

const angle = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'angle',
  range: { least: -7, most: 7 },
  required: true,
  example,
  about,
})

/** Disturbances of the contact and its drive that have a law of their own. */
export const contactKeys: Section['keys'] = {
  springStickSlip: {
    is: 'section',
    about: 'Stick and slip of the shaft: stiffness and inertia of the rig set its shape, frequency and speed limit.',
    keys: {
      staticExcess: share('Static friction over kinetic, less one.', '20 %', { above: 0, most: 10 }),
      dampingRatio: share('Damping as a share of the critical.', '3 %', { least: 0, most: 10 }),
      scatter: scatterKey,
    },
  },
  hunting: {
    is: 'section',
    about: 'The speed control swings by itself, with contact and without.',
    keys: {
      frequency: {
        is: 'quantity',
        dimension: 'frequency',
        range: { above: 0, most: 1e5 },
        required: true,
        example: '3 Hz',
        about: 'Waves per second.',
      },
      speedShare: share('Amplitude of the speed as a share of it.', '2 %', { least: 0, most: 1 }),
      torque: {
        is: 'quantity',
        dimension: 'torque',
        range: { least: 0, most: 1000 },
        required: true,
        example: '0.5 mN·m',
        about: 'Amplitude of the torque.',
      },
    },
  },
  archardWear: {
    is: 'section',
    about: 'Bodies that lose volume by load and distance; the gap falls by the depth of the caps or faces.',
    keys: {
      specificRate: {
        is: 'quantity',
        dimension: 'wearRate',
        range: { above: 0, most: 1 },
        required: true,
        example: '2e-5 mm³/(N·m)',
        about: 'Worn volume of one contact per load and distance.',
      },
    },
  },
  wornSpot: {
    is: 'section',
    about: 'A place of the track at which friction grows with the distance, as where a coating wears through.',
    keys: {
      angle: angle('Middle of the spot.', '60°'),
      width: angle('Full width at half of the excess.', '20°'),
      excess: share('Final excess as a share of friction; below zero for a place that is polished.', '15 %', {
        least: -1,
        most: 10,
      }),
      from: length('Distance at which it begins.', '2 m', { least: 0, most: 1e6 }),
      to: length('Distance at which it has its final excess.', '5 m', { above: 0, most: 1e6 }),
    },
  },
}
