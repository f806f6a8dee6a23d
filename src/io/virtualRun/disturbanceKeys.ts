import type { QuantityKey, Section } from '../setup/keyKinds.ts'
import { contactKeys, scatterKey } from './contactKeys.ts'

const share = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'ratio',
  range: { least: 0, most: 10 },
  required: true,
  example,
  about,
})

const phase: QuantityKey = {
  is: 'quantity',
  dimension: 'angle',
  range: { least: -100, most: 100 },
  example: '40°',
  default: '0°',
  about: 'Phase at the beginning of the record.',
}

const needed = (key: QuantityKey): QuantityKey => ({ ...key, required: true })

const length = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'length',
  range: { least: 0, most: 0.1 },
  example,
  about,
})

const time = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'time',
  range: { least: 0, most: 1e7 },
  required: true,
  example,
  about,
})

const ripple = (of: string, example: string): Section => ({
  is: 'section',
  about: `A share of ${of} that comes back with the turns.`,
  keys: {
    amplitude: share('Amplitude as a share of the mean.', example),
    order: {
      is: 'quantity',
      dimension: 'count',
      range: { least: 1, most: 100 },
      example: '1',
      default: '1',
      about: 'How often per turn.',
    },
    phase,
  },
})

/** What goes wrong or changes while the record is made. */
export const disturbanceKeys: Section = {
  is: 'section',
  about: 'What goes wrong or changes while the record is made. Leave out what does not.',
  keys: {
    frictionRipple: ripple('friction', '2 %'),
    forceRipple: ripple('axial force', '1 %'),
    tilt: {
      is: 'section',
      about: 'A plate that leans, so that the contact climbs and descends once per turn.',
      keys: {
        angle: {
          is: 'quantity',
          dimension: 'angle',
          range: { above: 0, most: 0.5 },
          required: true,
          example: '0.3°',
          about: 'How far it leans.',
        },
        phase,
        form: {
          is: 'choice',
          choices: ['tangent', 'cosine'],
          example: 'tangent',
          default: 'tangent',
          about: 'tan(atan µ + β cos θ), or its first order µ + tan β cos θ.',
        },
      },
    },
    gapRunOut: {
      is: 'section',
      about: 'A gap that swings once per turn.',
      keys: { amplitude: needed(length('Amplitude.', '1 µm')), phase },
    },
    stickSlip: {
      is: 'section',
      about: 'A saw-tooth in the friction while the contact is slow.',
      keys: {
        below: {
          is: 'quantity',
          dimension: 'velocity',
          range: { above: 0, most: 100 },
          required: true,
          example: '2 mm/s',
          about: 'Sliding speed from which on it slides evenly.',
        },
        frequency: {
          is: 'quantity',
          dimension: 'frequency',
          range: { above: 0, most: 1e5 },
          required: true,
          example: '1.7 Hz',
          about: 'Falls per second.',
        },
        share: share('Half of a fall as a share of friction.', '25 %'),
        scatter: scatterKey,
      },
    },
    ...contactKeys,
    lostContact: {
      is: 'section',
      about: 'A stretch within one step in which only a share of the axial force is left.',
      keys: {
        step: {
          is: 'quantity',
          dimension: 'count',
          range: { least: 1, most: 1e6 },
          required: true,
          example: '7',
          about: 'Number of the step, blanks counted.',
        },
        from: time('Since the step began.', '3 s'),
        to: time('Since the step began.', '9 s'),
        share: share('Share of the axial force that is left.', '15 %'),
      },
    },
    wear: {
      is: 'section',
      about: 'Bodies that grow shorter, so that the gap falls.',
      keys: { depthPerMetre: needed(length('Depth per metre of sliding.', '2 µm')) },
    },
    warming: {
      is: 'section',
      about: 'A temperature that drifts, and the shaft that grows with it and closes the gap.',
      keys: {
        change: {
          is: 'quantity',
          dimension: 'temperatureDifference',
          range: { least: -1000, most: 1000 },
          required: true,
          example: '0.5 K',
          about: 'How far the temperature goes.',
        },
        timeConstant: { ...time('Time constant of it.', '300 s'), range: { above: 0, most: 1e7 } },
        growthPerKelvin: needed(length('Growth of shaft and fixture per kelvin.', '1.5 µm')),
      },
    },
    runningIn: {
      is: 'section',
      about: 'Friction that begins too high and nears its steady value with the distance.',
      keys: {
        excess: share('How much too high, as a share.', '20 %'),
        distance: {
          is: 'quantity',
          dimension: 'length',
          range: { above: 0, most: 1e6 },
          required: true,
          example: '0.5 m',
          about: 'Distance after which 1/e of it is left.',
        },
      },
    },
    coatingFailure: {
      is: 'section',
      about: 'A coating that fails: friction rises to that of what lies below.',
      keys: {
        distance: {
          ...needed(length('Sliding distance at which it begins to fail.', '12 m')),
          range: { least: 0, most: 1e7 },
        },
        width: {
          ...length('Further distance over which friction rises.', '1 m'),
          range: { least: 0, most: 1e7 },
          default: '0 m',
        },
        friction: share('Friction of what lies below.', '0.6'),
      },
    },
    liquidChange: {
      is: 'section',
      about: 'A viscosity that changes with time: structure that breaks down, water that evaporates.',
      keys: {
        share: { ...share('Change in the end, below zero for thinner.', '-20 %'), range: { above: -1, most: 100 } },
        timeConstant: { ...time('Time constant of it.', '300 s'), range: { above: 0, most: 1e7 } },
      },
    },
  },
}
