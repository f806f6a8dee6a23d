import type { Dimension } from '../../core/quantity/index.ts'
import type { QuantityKey, Range, Section } from '../setup/keyKinds.ts'

/** A key for a quantity, with the range that is possible at all. */
export const quantityKey = (
  dimension: Dimension,
  range: Range,
  words: Pick<QuantityKey, 'about' | 'example' | 'default' | 'required'>,
): QuantityKey => ({ is: 'quantity', dimension, range, ...words })

const anyForce: Range = { above: 0, most: 1e5 }
const anySpeed: Range = { above: 0, most: 1e3 }
const anyTime: Range = { above: 0, most: 1e7 }
const anyLength: Range = { above: 0, most: 1e6 }
const share: Range = { above: 0, below: 1 }

/** What a person wants to know and is ready to spend. */
export const askKeys: Section = {
  is: 'section',
  required: true,
  about: 'What is wanted and what it may cost.',
  keys: {
    kind: {
      is: 'choice',
      choices: ['rank', 'limit', 'regimes', 'feel', 'last'],
      example: 'rank',
      default: 'rank',
      about:
        'Kind of answer: an order of samples, a limit kept, where the regimes begin, a difference that is felt, or how long it lasts.',
    },
    frictionLimit: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      { example: '0.25', about: 'Of the kind "limit": the friction that must be kept.' },
    ),
    limitSide: {
      is: 'choice',
      choices: ['at most', 'at least'],
      example: 'at most',
      default: 'at most',
      about: 'Of the kind "limit": on which side of it friction must stay.',
    },
    slowest: quantityKey('velocity', anySpeed, {
      example: '0.1 mm/s',
      required: true,
      about: 'Slowest sliding speed that matters in use.',
    }),
    fastest: quantityKey('velocity', anySpeed, {
      example: '200 mm/s',
      required: true,
      about: 'Fastest sliding speed that matters in use.',
    }),
    leastForce: quantityKey('force', anyForce, {
      example: '0.2 N',
      about: 'Smallest axial force that comes into question.',
    }),
    mostForce: quantityKey('force', anyForce, {
      example: '20 N',
      about: 'Largest axial force that comes into question.',
    }),
    axialForce: quantityKey('force', anyForce, {
      example: '5 N',
      about: 'The axial force, where it is already decided.',
    }),
    uncertainty: quantityKey('ratio', share, {
      example: '5 %',
      default: '5 %',
      about: 'Relative standard uncertainty that one point may have.',
    }),
    perDecade: quantityKey(
      'count',
      { least: 1, most: 1000 },
      { example: '10', default: '10', about: 'Points per decade of speed.' },
    ),
    direction: {
      is: 'choice',
      choices: ['up', 'down', 'up and down'],
      example: 'up and down',
      default: 'up and down',
      about: 'Order of the speeds. Both ways show run-in, starvation, heating and wear.',
    },
    turns: quantityKey(
      'ratio',
      { above: 0, most: 1e6 },
      { example: '1', default: '1', about: 'Turns that each step should last.' },
    ),
    leastDwell: quantityKey('time', anyTime, { example: '5 s', default: '5 s', about: 'Shortest step.' }),
    mostDwell: quantityKey('time', anyTime, { example: '120 s', default: '120 s', about: 'Longest step.' }),
    mostTime: quantityKey('time', anyTime, {
      example: '60 min',
      default: '60 min',
      about: 'Longest sweep, all steps together.',
    }),
    mostDistance: quantityKey('length', anyLength, {
      example: '100 m',
      default: '100 m',
      about: 'Longest sliding distance of one record.',
    }),
    conditioningDistance: quantityKey(
      'length',
      { least: 0, most: 1e6 },
      {
        example: '2 m',
        default: '2 m',
        about: 'Sliding distance of the running-in before the sweep.',
      },
    ),
    mostPressure: quantityKey(
      'pressure',
      { above: 0, most: 1e12 },
      {
        example: '50 MPa',
        about: 'Largest peak pressure that stands for the use.',
      },
    ),
    mostTiltingMoment: quantityKey(
      'torque',
      { above: 0, most: 1000 },
      {
        example: '0.1 N·m',
        about:
          'Moment that the shaft bears sideways, from the manual of the rig. A lone ball makes load times track radius.',
      },
    ),
    indentationShare: quantityKey('ratio', share, {
      example: '10 %',
      default: '10 %',
      about: 'Share of a coating or layer into which the contact may sink.',
    }),
    scarShare: quantityKey(
      'ratio',
      { above: 0, most: 100 },
      {
        example: '1',
        default: '1',
        about: 'Width of a worn scar over that of the elastic contact at which the balls are changed.',
      },
    ),
    staticDwell: quantityKey('time', anyTime, {
      example: '10 s',
      about: 'Rest under load before a breakaway test. Leave out where static friction is not asked for.',
    }),
  },
}
