import type { QuantityKey, Section } from './keyKinds.ts'

const accuracy = (of: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'ratio',
  range: { least: 0, below: 0.5 },
  required: true,
  example: '0.5 %',
  about: `Half-width of the scale error of ${of}, from the data sheet or the calibration (a rectangular error, JCGM 100, 4.3.7). 0 % leaves it out of the budget.`,
})

const torque: Section = {
  is: 'section',
  required: true,
  about: 'What the torque sensor can do. For a friction force read directly: the torque that it makes on the track.',
  keys: {
    accuracy: accuracy('torque'),
    floor: {
      is: 'quantity',
      dimension: 'torque',
      range: { above: 0, most: 1000 },
      example: '1 µN·m',
      about: 'Smallest torque that you trust. Points under it get a remark; without it that limit is not checked.',
    },
    ceiling: {
      is: 'quantity',
      dimension: 'torque',
      range: { above: 0, most: 1000 },
      example: '200 mN·m',
      about: 'Largest torque of the rig. Points at it are not trusted; without it that limit is not checked.',
    },
  },
}

const axialForce: Section = {
  is: 'section',
  required: true,
  about: 'What the axial-force sensor can do.',
  keys: {
    accuracy: accuracy('axial force'),
    floor: {
      is: 'quantity',
      dimension: 'force',
      range: { above: 0, most: 1e5 },
      example: '10 mN',
      about: 'Smallest axial force that you trust.',
    },
    ceiling: {
      is: 'quantity',
      dimension: 'force',
      range: { above: 0, most: 1e5 },
      example: '50 N',
      about: 'Largest axial force of the rig.',
    },
  },
}

const angularVelocity: Section = {
  is: 'section',
  about: 'Speeds that the drive can hold.',
  keys: {
    floor: {
      is: 'quantity',
      dimension: 'angularVelocity',
      range: { above: 0, most: 1e5 },
      example: '1e-6 rad/s',
      about: 'Slowest rotation that the drive holds.',
    },
    ceiling: {
      is: 'quantity',
      dimension: 'angularVelocity',
      range: { above: 0, most: 1e5 },
      example: '300 rad/s',
      about: 'Fastest rotation.',
    },
  },
}

export const rigKeys: Section = {
  is: 'section',
  required: true,
  about: 'The rheometer: what it can measure and how well.',
  keys: {
    name: { is: 'text', required: true, example: 'rheometer by the window', about: 'Your name for the rheometer.' },
    torque,
    axialForce,
    angularVelocity,
    inertia: {
      is: 'quantity',
      dimension: 'momentOfInertia',
      range: { above: 0, most: 1 },
      example: '20 µN·m·s²',
      about:
        'Moment of inertia of everything that turns. Without it ramps and starts are not corrected; steady steps do not need it.',
    },
    torsionalStiffness: {
      is: 'quantity',
      dimension: 'torsionalStiffness',
      range: { above: 0, most: 1e6 },
      example: '100 N·m/rad',
      about: 'Torsional stiffness of shaft, coupling and fixture together. Without it wind-up is not checked.',
    },
  },
}
