import type { FixtureKind } from '../../core/terms/index.ts'
import type { ChoiceKey, QuantityKey, Section, Variants } from './keyKinds.ts'

/** Largest body or track that still is a rheometer's fixture; catches a lost prefix (6.35 m). */
const largest = 0.5

const dimensionOf = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'length',
  range: { above: 0, most: largest },
  required: true,
  example,
  about,
})

const uncertaintyOf = (what: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'length',
  range: { least: 0, most: largest },
  example,
  default: '0 mm',
  about: `Standard uncertainty of the ${what}. 0 leaves it out of the budget.`,
})

const countOf = (about: string, least: number): QuantityKey => ({
  is: 'quantity',
  dimension: 'count',
  range: { least, most: 1000 },
  required: true,
  example: '3',
  about,
})

const ballDiameter = dimensionOf('Diameter of the ball.', '12.7 mm')
const ballDiameterUncertainty = uncertaintyOf('ball diameter', '0.001 mm')
const trackRadius = dimensionOf('Radius of the track: axis to middle of the contact.', '15 mm')
const trackRadiusUncertainty = uncertaintyOf('track radius', '0.02 mm')

const pressure: ChoiceKey = {
  is: 'choice',
  choices: ['uniform pressure', 'uniform wear'],
  required: true,
  example: 'uniform wear',
  about:
    'How the force spreads over the face and so where the lever arm lies: "uniform pressure" for new faces, "uniform wear" for faces that have run in. The result names the other arm too.',
}

const kind = (written: string): ChoiceKey => ({
  is: 'choice',
  choices: [written],
  required: true,
  example: written,
  about: 'Which bodies slide on which.',
})

const fixture = (written: string, about: string, keys: Section['keys']): Section => ({
  is: 'section',
  required: true,
  about,
  keys: { kind: kind(written), ...keys },
})

/** The kinds of fixture as setup files write them, and as the program calls them. */
export const fixtureKindsWritten: Readonly<Record<string, FixtureKind>> = {
  'balls on plate': 'ballsOnPlate',
  'ball on plates': 'ballOnPlates',
  'ball on balls': 'ballOnBalls',
  'ring on plate': 'ringOnPlate',
  'disc on plate': 'discOnPlate',
  'pins on disc': 'pinsOnDisc',
}

export const fixtureKeys: Variants = {
  is: 'variants',
  required: true,
  on: 'kind',
  about: 'The bodies in contact and their geometry.',
  variants: {
    'balls on plate': fixture('balls on plate', 'One ball or several on a track, sliding on a level plate.', {
      balls: countOf('How many balls share the load.', 1),
      ballDiameter: { ...ballDiameter, example: '6.35 mm' },
      trackRadius,
      trackRadiusUncertainty,
    }),
    'ball on plates': fixture('ball on plates', 'One ball in the middle, turning on inclined plates.', {
      plates: countOf('How many plates share the load.', 2),
      ballDiameter,
      ballDiameterUncertainty,
      inclination: {
        is: 'quantity',
        dimension: 'angle',
        range: { above: 0, below: Math.PI / 2 },
        required: true,
        example: '45°',
        about: "Angle between the axis and the plates' normals.",
      },
      inclinationUncertainty: {
        is: 'quantity',
        dimension: 'angle',
        range: { least: 0, below: Math.PI / 2 },
        example: '0.2°',
        default: '0°',
        about: 'Standard uncertainty of the inclination; at 45° one degree is 3.5 % of friction. 0 leaves it out.',
      },
    }),
    'ball on balls': fixture('ball on balls', 'One ball turning on three equal balls that touch each other.', {
      ballDiameter,
      ballDiameterUncertainty,
    }),
    'ring on plate': fixture('ring on plate', 'A ring, whole or in segments, on a plate.', {
      outerRadius: dimensionOf('Outer radius of the ring.', '15 mm'),
      innerRadius: dimensionOf('Inner radius of the ring.', '13 mm'),
      segments: { ...countOf('1 for a whole ring, else the number of equal segments.', 1), example: '1' },
      pressure,
      radiusUncertainty: uncertaintyOf('two radii, taken to err alike', '0.02 mm'),
    }),
    'disc on plate': fixture('disc on plate', 'A flat disc on a plate.', {
      radius: dimensionOf('Radius of the disc.', '12.5 mm'),
      pressure,
      radiusUncertainty: uncertaintyOf('radius', '0.02 mm'),
    }),
    'pins on disc': fixture('pins on disc', 'Flat or domed pins on a track.', {
      pins: countOf('How many pins share the load.', 1),
      pinDiameter: dimensionOf('Diameter of a pin.', '6 mm'),
      endRadius: {
        is: 'quantity',
        dimension: 'length',
        range: { above: 0, most: 10 },
        example: '50 mm',
        about: 'Radius of the domed end. Leave out for a flat end.',
      },
      trackRadius,
      trackRadiusUncertainty,
    }),
  },
}
