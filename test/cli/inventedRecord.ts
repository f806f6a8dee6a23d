import type { ReducedRecord } from '../../src/bench/index.ts'
import { reduceDefaults } from '../../src/core/reduce/index.ts'
import type { Setup } from '../../src/core/terms/index.ts'
import type { CurveFigureData } from '../../src/figure/index.ts'
import { inventedRemark, trouble, twelve } from '../figure/inventedCurves.ts'

// A made-up result for tests of what people read; no lab measured it and no solver made it.

const setup: Setup = {
  rig: {
    name: 'workshop rig (invented)',
    torque: { floor: 2e-6, ceiling: 0.2, scaleAccuracy: 0.005 },
    axialForce: { scaleAccuracy: 0.005 },
    angularVelocity: {},
  },
  fixture: { kind: 'ballsOnPlate', balls: 3, ballDiameter: 0.00635, trackRadius: 0.015, trackRadiusUncertainty: 2e-5 },
  pair: { upper: { name: 'steel ball' }, lower: { name: 'lacquer B on beech' } },
  run: { axialForce: 8, temperature: 298.15, sample: 'lacquer B', note: 'Invented record.' },
  options: {},
}

export const inventedRecord = (data: CurveFigureData = twelve): ReducedRecord => ({
  file: 'drawer-b.csv',
  read: {
    rows: 4800,
    columns: [
      { column: 1, heading: 'Time [s]', unit: 's', channel: 'time', source: 'guess', reason: 'the word "time"' },
      {
        column: 2,
        heading: 'M\u001b[31m [mNm]',
        unit: 'mN·m',
        channel: 'torque',
        source: 'option',
        reason: 'you said so',
      },
      { column: 3, heading: 'Remark', unit: '', channel: null, source: 'guess', reason: 'holds words' },
    ],
    dialect: {
      format: 'text',
      encoding: 'utf-8',
      separator: ',',
      decimalMark: '.',
      thousandsMark: null,
      preambleLines: 0,
      headerLine: 1,
      unitRow: false,
      repeatedHeadings: 0,
    },
    preamble: [],
  },
  setup,
  options: { ...reduceDefaults },
  reduction: {
    steps: data.points.map(({ step, rows }) => ({
      number: step,
      kind: 'slide',
      from: rows.from,
      to: rows.to,
      target: 1,
    })),
    points: data.points,
    segmentation: 'stepColumn',
    forceZero: {
      from: 'blank',
      level: -0.021,
      slope: 0,
      at: 5,
      levelUncertainty: 0.0012,
      slopeUncertainty: 0,
      rows: 400,
    },
    torqueBlank: { from: 'none', level: 0, perSpeed: 0, covariance: [0, 0, 0], turn: [], rows: 0 },
    ripple: [{ order: 1, torque: 0.12, force: 0.07, friction: 0.06, uncertainty: 0.001 }],
    noiseCorrelation: 0.6,
    sampleInterval: 0.05,
    window: data.window ?? trouble.window ?? refuse(),
    remarks: [],
  },
  curve: data.curve,
  budget: [
    { source: 'torqueScale', relative: 0.003, share: 0.69 },
    { source: 'forceScale', relative: 0.002, share: 0.31 },
  ],
  remarks: [inventedRemark('torqueBlankMissing')],
  origin: {
    raw: 'a'.repeat(64),
    setup: 'b'.repeat(64),
    options: { ...reduceDefaults },
    program: 'kufe 0.0.0-test',
    seed: 1,
  },
})

const refuse = (): never => {
  throw new Error('an invented record needs a window')
}
