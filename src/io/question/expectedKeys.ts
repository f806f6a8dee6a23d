import type { Section } from '../setup/keyKinds.ts'
import { quantityKey } from './askKeys.ts'

const spread = { least: 1, most: 100 } as const

/** Friction as somebody expects it. */
export const expectedKeys: Section = {
  is: 'section',
  about: 'Friction as expected before the test. A rough guess is enough; the band admits how rough.',
  keys: {
    boundary: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      {
        example: '0.2',
        default: '0.2',
        about: 'Friction while the surfaces touch, or dry.',
      },
    ),
    boundarySpread: quantityKey('ratio', spread, {
      example: '2',
      default: '2',
      about: 'Factor to either side within which it lies.',
    }),
    film: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      {
        example: '0.05',
        default: '0.05',
        about: 'Friction of a full film between hard bodies; soft ones have a law of their own.',
      },
    ),
    filmSpread: quantityKey('ratio', spread, {
      example: '2',
      default: '2',
      about: 'Factor to either side within which it lies.',
    }),
    pressureViscosity: quantityKey(
      'ratio',
      { least: 0, most: 200 },
      {
        example: '20',
        about:
          'Pressure–viscosity coefficient of the liquid in 1/GPa, as a plain number: about 0.5 for water, 10 to 30 for oils.',
      },
    ),
  },
}

const torque = { least: 0, most: 1000 } as const
const force = { least: 0, most: 1e5 } as const

/** Noise and zeroes of the rig as they were seen. */
export const noiseKeys: Section = {
  is: 'section',
  about:
    'Noise of the rig as seen in an earlier record. Left out, a tenth of the smallest trusted torque and force stands in.',
  keys: {
    torque: quantityKey('torque', torque, { example: '4 µN·m', about: 'Standard deviation of one torque reading.' }),
    axialForce: quantityKey('force', force, { example: '5 mN', about: 'Standard deviation of one force reading.' }),
    correlationTime: quantityKey(
      'time',
      { above: 0, most: 1e5 },
      {
        example: '1 s',
        default: '1 s',
        about: 'Time after which readings have forgotten each other.',
      },
    ),
    torqueZero: quantityKey('torque', torque, {
      example: '1 µN·m',
      about: 'Standard uncertainty of the torque that a blank leaves.',
    }),
    forceZero: quantityKey('force', force, {
      example: '5 mN',
      about: 'Standard uncertainty of the zero of the axial force.',
    }),
    tilt: quantityKey(
      'angle',
      { least: 0, most: 1.5 },
      {
        example: '0.2°',
        default: '0.2°',
        about: 'Tilt of the plate that a part of a turn would let through.',
      },
    ),
  },
}

const share = { above: 0, below: 1 } as const

/** What is to be decided between samples. */
export const decidingKeys: Section = {
  is: 'section',
  about: 'What has to be decided between the samples, and how surely.',
  keys: {
    samples: { is: 'text', example: 'lacquer A, lacquer B', about: 'Names of the samples, with commas between them.' },
    difference: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      {
        example: '10 %',
        default: '10 %',
        about: 'Smallest difference of friction worth knowing.',
      },
    ),
    repeatability: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      {
        example: '8 %',
        default: '8 %',
        about: 'Standard deviation between true replicates: fresh mounting, fresh surfaces.',
      },
    ),
    repeatabilityFrom: {
      is: 'choice',
      choices: ['measured', 'assumed'],
      example: 'assumed',
      default: 'assumed',
      about: 'Whether the repeatability was measured on this rig and pair.',
    },
    margin: quantityKey(
      'ratio',
      { above: 0, most: 10 },
      {
        example: '10 %',
        default: '10 %',
        about: 'Difference without meaning: within it two samples count as the same.',
      },
    ),
    power: quantityKey('ratio', share, {
      example: '80 %',
      default: '80 %',
      about: 'Chance to see the difference if it is there.',
    }),
    significance: quantityKey(
      'ratio',
      { above: 0, below: 0.5 },
      {
        example: '5 %',
        default: '5 %',
        about: 'Chance to see a difference that is not there.',
      },
    ),
    runsPerDay: quantityKey(
      'count',
      { least: 1, most: 1000 },
      {
        example: '8',
        default: '8',
        about: 'Runs that a day holds, check standards among them.',
      },
    ),
    checkStandard: {
      is: 'text',
      example: 'silicone oil, our bottle 3',
      about: 'A sample that is measured again and again to watch the rig.',
    },
    seed: quantityKey(
      'count',
      { least: 0, most: 4294967295 },
      {
        example: '1',
        default: '1',
        about: 'Seed of the random order; the same seed gives the same order.',
      },
    ),
  },
}
