// Long because one invented record must hold something of everything that a report shows.
import type { Curve, Point, ReduceOptions, Reduction, Remark } from '../../src/core/terms/index.ts'
import type { ReportFigure, ReportInput } from '../../src/report/index.ts'
import { inventedSheet } from './runSheet/inventedSheet.ts'

// Invented values, nobody measured them: a workshop that picks a lacquer for wooden drawer runners.

const options: ReduceOptions = {
  segmentation: 'auto',
  rampBinsPerDecade: 10,
  settleTolerance: 0.02,
  floorFactor: 10,
  forceTolerance: 0.02,
  temperatureTolerance: 1,
  forceRippleLimit: 0.05,
  frictionRippleLimit: 0.1,
  contactShare: 0.5,
  gapCreepLimit: 1e-6,
  biasLimit: 0.05,
  significance: 0.01,
  bandDraws: 1000,
  seed: 1,
}

const underOneTurn = (step: number, turns: number): Remark => ({
  kind: 'underOneTurn',
  seen: turns,
  limit: 1,
  unit: '',
  step,
  sentence: `The step covers ${turns} of a turn.`,
  next: 'Let the step last a whole turn, or reverse the direction and average.',
})

const contactLost: Remark = {
  kind: 'contactLost',
  seen: 0.6,
  limit: 2.5,
  unit: 'N',
  sentence: 'The axial force fell to 0.6 N for 4 s.',
  next: 'Look for a loose or tilted body.',
}

export const forceZeroMissing: Remark = {
  kind: 'forceZeroMissing',
  seen: 0,
  limit: 1,
  unit: '',
  sentence: 'The record holds no stretch without contact.',
  next: 'Record some seconds with the fixture lifted.',
}

export const point = (changes: Partial<Point>): Point => ({
  step: 1,
  slidingSpeed: 0.01,
  friction: 0.25,
  low: 0.249,
  high: 0.251,
  ownUncertainty: 0.0005,
  sharedUncertainty: 0.001,
  shared: { torqueScale: 0.0008, lever: 0.0006 },
  degreesOfFreedom: 40,
  turns: 3.2,
  duration: 12,
  torque: 0.01875,
  axialForce: 5.001,
  gap: null,
  temperature: 296.15,
  autocorrelationTime: 3,
  frictionHarmonics: [],
  forceHarmonics: [],
  direction: 1,
  trusted: true,
  rows: { from: 0, to: 120, kept: 12 },
  remarks: [],
  ...changes,
})

export const points: readonly Point[] = [
  point({
    step: 1,
    slidingSpeed: 0.001,
    turns: 0.4,
    friction: 0.262,
    low: 0.2615,
    high: 0.2625,
    remarks: [underOneTurn(1, 0.4)],
  }),
  point({ step: 2, slidingSpeed: 0.003, turns: 0.9, remarks: [underOneTurn(2, 0.9)] }),
  point({ step: 3, slidingSpeed: 0.01, trusted: false, remarks: [contactLost] }),
  point({ step: 4, slidingSpeed: 0.03, friction: null, low: null, high: null, ownUncertainty: null, trusted: false }),
  point({ step: 5, slidingSpeed: 0.1, friction: 0.3, low: 0.2986, high: 0.3014 }),
]

export const reduction: Reduction = {
  steps: [
    { number: 0, kind: 'blank', from: 0, to: 50, target: 1 },
    ...points.map(({ step }) => ({ number: step, kind: 'slide' as const, from: 50, to: 170, target: 1 })),
  ],
  points,
  segmentation: 'stepColumn',
  forceZero: {
    from: 'blankBeforeAndAfter',
    level: 0.0213,
    slope: 1e-5,
    at: 30,
    levelUncertainty: 0.0004,
    slopeUncertainty: 2e-6,
    rows: 1240,
  },
  torqueBlank: {
    from: 'blank',
    level: 2.4e-6,
    perSpeed: 3e-9,
    covariance: [1e-14, 0, 1e-20],
    turn: [{ order: 1, cosine: 3e-7, sine: 4e-7 }],
    rows: 1240,
  },
  ripple: [{ order: 1, torque: 0.02, force: 0.012, friction: 0.015, uncertainty: 0.001 }],
  noiseCorrelation: 0.62,
  sampleInterval: 0.1,
  window: {
    low: 0.001,
    high: 0.1,
    limits: [],
    partialTurnBias: [{ step: 1, turns: 0.4, bound: 0.011 }],
    sentence: 'Believe this curve from 1 mm/s to 100 mm/s.',
    plateau: { verdict: 'notReached', sentence: 'No plateau is reached.' },
  },
  remarks: [forceZeroMissing],
}

export const curve: Curve = {
  model: 'powerLaw',
  parameters: [
    { name: 'k', value: 0.35, low: 0.34, high: 0.36, unit: '' },
    { name: 'n', value: 0.04, low: -0.01, high: null, unit: '' },
  ],
  features: [
    { name: 'boundaryLevel', value: null, low: null, high: null, unit: '', why: 'a power law has no boundary plateau' },
    {
      name: 'minimumSpeed',
      value: 0.0123,
      low: 0.0101,
      high: null,
      unit: 'm/s',
      why: 'least friction inside the data',
    },
  ],
  band: [],
  bandMethod: 'Bootstrap over the steps, 1000 draws.',
  end: { why: 'converged', gradientNorm: 1e-9, iterations: 12 },
  choices: [
    { model: 'powerLaw', delta: 0, weight: 0.81, parameters: 2 },
    { model: 'plateau', delta: 2.9, weight: 0.19, parameters: 1 },
  ],
  correlations: [{ first: 'k', second: 'n', value: -0.97 }],
  chiSquared: 4.2,
  degreesOfFreedom: 1,
  extraScatter: 0.012,
  points: 3,
  remarks: [],
}

export const picture = (name: ReportFigure['name'], words = `what ${name} shows`): ReportFigure => ({
  name,
  svg: `<svg xmlns="http://www.w3.org/2000/svg" width="720" height="120" viewBox="0 0 720 120"><title>${name}</title><desc>${words}</desc><rect width="720" height="120" fill="#fff"/><path d="M0 60H720" stroke="#1f6b52"/></svg>`,
  darkSvg: null,
  caption: `Caption of ${name}.`,
})

/** A whole input with all there can be; `changes` replace parts of it. */
export const inventedInput = (changes: Partial<ReportInput> = {}): ReportInput => ({
  setup: {
    rig: {
      name: 'workshop rheometer, invented',
      torque: { scaleAccuracy: 0.005, floor: 5e-6, ceiling: 0.2 },
      axialForce: { scaleAccuracy: 0.005, ceiling: 50 },
      angularVelocity: { ceiling: 300 },
      inertia: 2e-5,
    },
    fixture: {
      kind: 'ballsOnPlate',
      balls: 3,
      ballDiameter: 0.00635,
      trackRadius: 0.015,
      trackRadiusUncertainty: 2e-5,
    },
    pair: {
      upper: { name: 'steel ball', roughness: 3e-8, elasticModulus: 210e9, poissonRatio: 0.3 },
      lower: { name: 'lacquer A on beech', thickness: 6e-5 },
    },
    run: { axialForce: 5, temperature: 296.15, sample: 'lacquer A, mounting 1', relativeHumidity: 0.5 },
    options: {},
  },
  options,
  reduction,
  curve,
  remarks: [forceZeroMissing],
  budget: [
    { source: 'torqueScale', relative: 0.0032, share: 0.64 },
    { source: 'lever', relative: 0.0024, share: 0.36 },
  ],
  geometry: { lever: 0.015, loadFactor: 1, contacts: 3 },
  pressure: { mean: 3.1e8, peak: 4.65e8, load: 5 / 3, law: 'Hertz', doubts: ['The body is thin.'] },
  record: { file: 'lacquer-a-1.csv', rows: 1320 },
  origin: {
    raw: 'd9f729bf56d253656cac41709bba57a506acfb2b610e0dfce0f8c8f052ac2667',
    setup: 'bf0ecfcc4f7bc518e92569c42ae3d5768cc559c23b09ff7f19be8c8cd5815c45',
    options: { ...options, columns: [{ heading: 'Torque' }] },
    program: 'kufe 0.1.0',
    seed: 1,
  },
  figures: (['fixture', 'strip', 'turnMap', 'curve', 'remarks', 'budget'] as const).map((name) => picture(name)),
  beyond: [
    {
      heading: 'Wear',
      sentences: ['The scar of 0.3 mm lost 6.26e-5 mm³.', 'Wear moved the pressure during the sweep.'],
      table: { caption: 'Scars.', columns: ['scar', 'diameter (mm)'], rows: [['1', '0.30']] },
    },
  ],
  texts: {
    question: 'Which lacquer slides easier on a drawer runner?',
    author: 'A. Nother',
    date: '2026-11-25',
    notes: { cleaning: 'Wiped with isopropanol and used within an hour.' },
    limit: {
      limit: 'a friction of at most 0.12',
      rule: 'guard band w = U at 95 % on both sides of the limit',
      sentences: ['lacquer A passes: it keeps to a friction of at most 0.12 at 10 mm/s.'],
    },
    rigWatch: {
      watched: ['Check standard wax at 10 mm/s: 20 measurements, 2 alarms, 1 of them open.'],
      open: [{ sentence: 'wax, 2026-11-24: one value beyond three standard deviations', id: 'wax-1f00-beyond-three' }],
    },
    asFound: {
      sheet: inventedSheet,
      answers: [
        {
          id: 'forceZero',
          value: 0.01,
          state: 'outside',
          sentence: 'axial force: 10 mN. Zero again.',
          note: 'draught',
        },
        { id: 'sweep', value: null, state: 'open', sentence: '' },
      ],
      by: 'AN',
      on: '2026-11-25',
    },
  },
  ...changes,
})
