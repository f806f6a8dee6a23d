import type { ChoiceKey, QuantityKey, Section, Variants } from '../setup/keyKinds.ts'

const speed = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'velocity',
  range: { above: 0, most: 100 },
  required: true,
  example,
  about,
})

const directions: readonly string[] = ['up', 'down', 'up and down']

const direction: ChoiceKey = {
  is: 'choice',
  choices: directions,
  example: 'up',
  default: 'up',
  about: 'In which order the speeds come.',
}

const kind = (written: string): ChoiceKey => ({
  is: 'choice',
  choices: [written],
  required: true,
  example: written,
  about: 'How the speeds are given.',
})

const plan = (written: string, about: string, keys: Section['keys']): Section => ({
  is: 'section',
  required: true,
  about,
  keys: { kind: kind(written), ...keys },
})

const time = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'time',
  range: { above: 0, most: 1e6 },
  example,
  about,
})

/** Which speeds are visited. */
export const speedKeys: Variants = {
  is: 'variants',
  required: true,
  on: 'kind',
  about: 'The sliding speeds: a range in steps, a list, or a ramp without stops.',
  variants: {
    range: plan('range', 'Steps that are even in log speed.', {
      slowest: speed('Slowest sliding speed.', '0.5 mm/s'),
      fastest: speed('Fastest sliding speed.', '200 mm/s'),
      perDecade: {
        is: 'quantity',
        dimension: 'count',
        range: { least: 1, most: 100 },
        required: true,
        example: '4',
        about: 'Steps per decade of speed.',
      },
      direction,
    }),
    list: plan('list', 'Steps at the speeds of a list.', {
      speeds: {
        is: 'text',
        required: true,
        example: '1 mm/s; 10 mm/s; 100 mm/s',
        about: 'Sliding speeds with units, separated by semicolons; below zero the fixture turns backwards.',
      },
    }),
    ramp: plan('ramp', 'The speed changes all the time.', {
      slowest: speed('Slowest sliding speed.', '0.5 mm/s'),
      fastest: speed('Fastest sliding speed.', '200 mm/s'),
      duration: { ...time('Time of one way.', '120 s'), required: true },
      law: {
        is: 'choice',
        choices: ['logarithmic', 'linear'],
        example: 'logarithmic',
        default: 'logarithmic',
        about: 'Whether equal times bring equal factors or equal differences of speed.',
      },
      direction,
    }),
  },
}

/** What is asked of the rig besides the speeds. */
export const sheetKeys: Section = {
  is: 'section',
  required: true,
  about: 'The run sheet. Axial force and temperature stand under "run".',
  keys: {
    dwell: time('Time of one step. Give this or "turns"; a ramp needs neither.', '10 s'),
    turns: {
      is: 'quantity',
      dimension: 'ratio',
      range: { above: 0, most: 1e6 },
      example: '1',
      about: 'Turns of one step, within "leastDwell" and "mostDwell".',
    },
    leastDwell: { ...time('Shortest time of a step that is given in turns.', '5 s'), default: '5 s' },
    mostDwell: { ...time('Longest time of a step that is given in turns.', '120 s'), default: '120 s' },
    samplingRate: {
      is: 'quantity',
      dimension: 'frequency',
      range: { above: 0, most: 1e5 },
      required: true,
      example: '10 Hz',
      about: 'Rows per second.',
    },
    blank: {
      is: 'choice',
      choices: ['none', 'before', 'after', 'before and after'],
      example: 'before',
      default: 'none',
      about: 'Whether the same speeds are run without contact too.',
    },
    lift: {
      is: 'quantity',
      dimension: 'length',
      range: { above: 0, most: 0.1 },
      example: '1 mm',
      default: '1 mm',
      about: 'How far the fixture is lifted for a blank.',
    },
  },
}
