import { describe, expect, test } from 'vitest'
import type { Breakaway, Hold, Loop, Series, Start } from '../../src/core/terms/index.ts'
import {
  breakawayFigure,
  frictionMapFigure,
  holdFigure,
  loopFigure,
  type PaletteName,
  runInFigure,
  seriesFigure,
  seriesMultiplesFigure,
} from '../../src/figure/index.ts'
import { faultsOf } from './faultsOf.ts'
import { goldenText } from './goldenText.ts'

const note = 'Invented data: no lab measured them.'
const bounded = (value: number, reach: number) => ({ value, low: value - reach, high: value + reach })

const runIn = {
  verdict: 'runIn',
  change: bounded(-0.002, 0.004),
  margin: 0.05,
  from: 20,
  to: 30,
  sentence: 'Run in: over the last third friction changed by −0.2 %, inside ±5 %.',
} as const

const distances = Array.from({ length: 40 }, (_, i) => 0.4 + 0.75 * i)
const lawAt = (s: number): number => 0.12 + 0.05 * Math.exp(-s / 3)

const hold: Hold = {
  steps: [1],
  slidingSpeed: 0.05,
  axialForce: 5,
  from: 0.4,
  to: 29.65,
  duration: 590,
  turns: 310,
  blocks: distances.map((distance, i) => ({
    distance,
    time: 20 * distance,
    friction: lawAt(distance) + 0.001 * Math.sin(7 * i) + (distance > 26 ? 0.06 * (distance - 26) : 0),
  })),
  rowsPerBlock: 75,
  noiseCorrelation: 0.1,
  noiseDeviation: 0.001,
  law: 'runIn',
  choices: [{ law: 'runIn', delta: 0, weight: 1 }],
  quantities: [{ name: 'steady', unit: '', ...bounded(0.12, 0.001) }],
  fitted: distances.filter((s) => s < 26).map(lawAt),
  late: bounded(0.12, 0.001),
  shared: {},
  steadyFrom: bounded(9, 1.2),
  steadyShare: 0.02,
  runIn,
  early: bounded(0.1, 0.02),
  hump: null,
  life: { threshold: 0.2, distance: bounded(27.3, 0.2), watched: 29.65, sentence: 'Friction passed 0.2 after 27.3 m.' },
  gapCreep: null,
  remarks: [],
}

const startOf = (step: number, dwell: number, friction: number): Start => ({
  step,
  kind: 'torqueRamp',
  dwell,
  torqueRate: 2e-3,
  axialForce: 5,
  moved: friction > 0,
  staticFriction: friction > 0 ? bounded(friction, 0.002) : null,
  ownUncertainty: 0.001,
  shared: {},
  held: 0.2,
  at: friction > 0 ? { time: 9, torque: friction * 0.075, angle: friction * 3e-3 } : null,
  stiffness: bounded(25, 0.2),
  elastic: friction * 3e-3,
  creep: 0,
  angleNoise: 2e-6,
  motionThreshold: 6e-4,
  kinetic: null,
  peak: { cause: 'staticFriction', sentence: '', evidence: [] },
  remarks: [],
  trace: Array.from({ length: 20 }, (_, i) => {
    const torque = 1e-3 * i
    const slid = friction > 0 && torque > friction * 0.075 ? 0.01 : 0
    return { time: i / 2, torque, angle: torque / 25 + slid }
  }),
})

const breakaway: Breakaway = {
  starts: [startOf(2, 1, 0.21), startOf(4, 10, 0.235), startOf(6, 100, 0.262), startOf(8, 100, 0)],
  ageing: {
    level: bounded(0.205, 0.01),
    slope: bounded(0.012, 0.002),
    time: { value: 0.9, low: null, high: 3 },
    scatter: 0.002,
    starts: 3,
    grows: 'yes',
    sentence: 'Static friction grows with the time at rest: by 0.028 per decade.',
  },
  ageingMissing: null,
  lever: 0.015,
  stiffness: { given: 25, seen: 25 },
  remarks: [],
}

const loopSpeeds = [1e-3, 3e-3, 1e-2, 3e-2, 0.1]
const loop: Loop = {
  pairs: loopSpeeds.map((slidingSpeed, i) => {
    const difference = 0.03 / (1 + i * i)
    return {
      slidingSpeed,
      up: i + 1,
      down: 10 - i,
      frictionUp: 0.2 - 0.03 * i + difference,
      frictionDown: 0.2 - 0.03 * i,
      difference: bounded(difference, 0.001),
      together: { low: difference - 0.0016, high: difference + 0.0016 },
      shared: 1e-5,
      p: i < 3 ? 1e-6 : 0.4,
    }
  }),
  area: bounded(0.05, 0.002),
  height: bounded(0.011, 0.0005),
  heightShared: 1e-5,
  share: bounded(0.08, 0.003),
  margin: 0.05,
  verdict: 'real',
  sentence: 'The loop is real: on the mean over 5 speeds up lies 8 % over down.',
  between: 200,
  causes: [],
  remarks: [],
}

const series: Series = {
  axis: 'load',
  members: [1, 3, 10].map((axialForce) => ({
    name: `${axialForce} N`,
    axialForce,
    load: axialForce / 3,
    temperature: 298.15,
    viscosity: null,
    points: loopSpeeds.map((slidingSpeed) => ({
      slidingSpeed,
      friction: 0.1 * axialForce ** -0.33 * slidingSpeed ** -0.12,
      ownUncertainty: 1e-4,
    })),
    forceZero: 0.01,
  })),
  atSpeeds: loopSpeeds.map((slidingSpeed) => ({ slidingSpeed, records: 3, shared: 0.004, ...bounded(0.33, 0.05) })),
  overall: { slidingSpeed: null, records: 3, shared: 0.004, ...bounded(0.33, 0.04) },
  sameAtAllSpeeds: 0.6,
  intercepts: [],
  scatter: 0.01,
  sentences: ['Friction goes with load as F^(−a) with a = 0.33.'],
  remarks: [],
}
const across = {
  title: 'sliding speed (mm/s)',
  places: series.members.map(({ points }) => points.map(({ slidingSpeed }) => 1000 * slidingSpeed)),
}

const inLog = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))
const map = {
  title: 'Friction over speed and load (invented)',
  speeds: inLog(1e-3, 0.1, 12),
  loads: inLog(1, 10, 8),
  friction: Float64Array.from({ length: 96 }, (_, i) => (i % 12 > 9 && i > 60 ? Number.NaN : 0.1 + 0.002 * i)),
  data: series.members.flatMap(({ axialForce, points }) =>
    points.map(({ slidingSpeed, friction }) => ({ slidingSpeed, load: axialForce, friction })),
  ),
  note,
}

type Draw = (options: { palette?: PaletteName; id?: string; width?: number }) => string
const changes = [
  { from: 'sweep 1 up', to: 'sweep 2 up', mean: bounded(-0.08, 0.01), largest: bounded(-0.16, 0.02) },
  { from: 'sweep 2 up', to: 'sweep 3 up', mean: bounded(-0.01, 0.01), largest: bounded(-0.02, 0.02) },
]

const drawings: readonly [string, Draw][] = [
  ['hold', (options) => holdFigure({ title: 'Hold (invented)', caption: runIn.sentence, note, hold }, options)],
  ['breakaway', (options) => breakawayFigure({ title: 'Breakaway (invented)', note, breakaway }, options)],
  ['loop', (options) => loopFigure({ title: 'Up and down (invented)', note, loop }, options)],
  [
    'run-in',
    (options) => runInFigure({ title: 'Run-in (invented)', note, changes, margin: 0.05, sentence: 'Run in.' }, options),
  ],
  ['series', (options) => seriesFigure({ title: 'Load series (invented)', note, series, across }, options)],
  ['multiples', (options) => seriesMultiplesFigure({ title: 'Load series (invented)', note, series, across }, options)],
  ['friction-map', (options) => frictionMapFigure(map, options)],
]

describe.each(drawings)('%s', (name, draw) => {
  test('lies in golden/ as it is drawn', async () => {
    await expect(goldenText(draw({ palette: 'light', id: 'golden' }))).toMatchFileSnapshot(
      `golden/question-${name}.svg`,
    )
  })

  test('is sound in every palette and narrow', () => {
    for (const palette of ['light', 'dark', 'print'] as const) expect(faultsOf(draw({ palette }))).toEqual([])
    expect(faultsOf(draw({ width: 480 }))).toEqual([])
  })
})

test('is sound with next to nothing', () => {
  expect(faultsOf(holdFigure({ title: 'Bare', hold: { ...hold, life: null, steadyFrom: null, fitted: [] } }))).toEqual(
    [],
  )
  const nothing = { ...breakaway, starts: breakaway.starts.slice(3), ageing: null, ageingMissing: 'None.' }
  expect(faultsOf(breakawayFigure({ title: 'Bare', breakaway: nothing }))).toEqual([])
  expect(faultsOf(loopFigure({ title: 'Bare', loop: { ...loop, pairs: loop.pairs.slice(0, 1) } }))).toEqual([])
  const bare = { ...series, atSpeeds: [], overall: null }
  expect(faultsOf(seriesFigure({ title: 'Bare', series: bare, across }))).toEqual([])
  expect(() => frictionMapFigure(map, { plotHeight: 10 })).toThrow(RangeError)
})

test('names every measured place of the map to whoever hovers', () => {
  expect(frictionMapFigure(map).match(/<title>[^<]*mm\/s/g)).toHaveLength(15)
})
