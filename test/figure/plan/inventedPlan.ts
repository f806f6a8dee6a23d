import type {
  FrictionWindowData,
  LoadWindowData,
  PredictionData,
  ReplicatesData,
  RunInTimeData,
} from '../../../src/figure/index.ts'

// Invented: a plan whose limits are known by hand, so that places in the pictures can be.

const places = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))

const words = { caption: 'invented', note: 'Invented data: nobody planned this.' } as const

const speeds = places(1e-4, 1, 41)
const loads = places(0.1, 100, 31)

/** Over 10 N the coating is pressed too deep; under 1 mm/s the sweep takes too long. */
export const loadWindow: LoadWindowData = {
  ...words,
  title: 'Where friction can be measured',
  speeds,
  loads,
  cells: loads.flatMap((load) => speeds.map((speed) => (load > 10 ? 1 : speed < 1e-3 ? 2 : 0))),
  limits: [
    { sign: 'c', words: 'sinks too deep into the coating or layer' },
    { sign: 'T', words: 'sweep from here takes too long' },
    { sign: 'x', words: 'a limit that does not occur' },
  ],
  planned: { load: 2, steps: places(1e-3, 0.5, 9) },
}

/** Friction falls from 0.2 to 0.02 with speed. */
const friction = speeds.map((speed) => 0.02 + 0.18 / (1 + speed / 0.01))

const steps = places(1e-3, 0.5, 9).map((slidingSpeed) => ({
  slidingSpeed,
  friction: 0.02 + 0.18 / (1 + slidingSpeed / 0.01),
  uncertainty: 0.04,
  direction: 1 as const,
}))

const expected = {
  ...words,
  speeds,
  friction,
  low: friction.map((value) => value / 2),
  high: friction.map((value) => value * 2),
  steps,
}

export const frictionWindow: FrictionWindowData = {
  ...expected,
  title: 'Which friction can be measured',
  borders: [
    { sign: 'f', words: 'torque too small', at: speeds.map(() => 0.003), forbids: 'below' },
    { sign: 't', words: 'under one turn', at: speeds.map((speed) => 3e-5 / speed), forbids: 'below' },
    { sign: 'M', words: 'torque over the rig’s largest', at: speeds.map(() => 0.9), forbids: 'above' },
    { sign: 'z', words: 'out of sight', at: speeds.map(() => Number.POSITIVE_INFINITY), forbids: 'above' },
  ],
}

export const prediction: PredictionData = {
  ...expected,
  title: 'The curve as expected',
  mixedFrom: { value: 3e-3, low: 1e-3, high: 9e-3 },
  fullFilmFrom: { value: 0.1, low: 0.04, high: 0.3 },
}

export const runInTime: RunInTimeData = {
  ...words,
  title: 'One record in time',
  parts: [
    { name: 'Surfaces', duration: 1200 },
    { name: 'Mounting', duration: 900 },
    { name: 'Zeroes at the test temperature', duration: 180 },
    { name: 'Sweep', duration: 1800 },
    { name: 'Afterwards', duration: 900 },
  ],
  sweepFrom: 2280,
  steps: places(1e-3, 0.5, 9).map((slidingSpeed) => ({ slidingSpeed, dwell: 200 })),
  distance: 220,
}

export const replicates: ReplicatesData = {
  ...words,
  title: 'What more replicates buy',
  seen: [2, 3, 4, 5, 6, 8, 10].map((count) => ({ replicates: count, difference: 0.5 / count })),
  wanted: 0.1,
  enough: 5,
}
