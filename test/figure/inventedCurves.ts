import type { BelievableWindow, Curve, Point, Remark, RemarkKind } from '../../src/core/terms/index.ts'
import type { CurveFigureData } from '../../src/figure/index.ts'

// Made-up curves for pictures: no lab measured them. Noise is a fixed wave, so that nothing here needs chance.

interface Invented {
  readonly from: number
  readonly to: number
  readonly count: number
  readonly direction?: 1 | -1
  readonly firstStep?: number
  readonly friction: (speed: number, index: number) => number | null
  readonly ownShare?: number
  readonly sharedShare?: number
  readonly remarks?: (step: number) => readonly RemarkKind[]
  readonly trusted?: (step: number) => boolean
}

export const stribeck = (speed: number): number => {
  const film = 0.09 * speed ** 0.35
  return film + (0.22 - film) / (1 + (speed / 0.008) ** 1.3)
}

export function inventedPoints(how: Invented): readonly Point[] {
  const share = how.ownShare ?? 0.004
  return Array.from({ length: how.count }, (_, index) => {
    const ratio = how.count === 1 ? 0 : index / (how.count - 1)
    const rising = how.direction !== -1
    const speed = how.from * (how.to / how.from) ** (rising ? ratio : 1 - ratio)
    const truth = how.friction(speed, index)
    const friction = truth === null ? null : truth * (1 + share * Math.sin(2.3 * index + 1))
    const step = (how.firstStep ?? 1) + index
    return inventedPoint({ how, step, speed, friction, share })
  })
}

function inventedPoint(at: {
  how: Invented
  step: number
  speed: number
  friction: number | null
  share: number
}): Point {
  const { how, step, speed, friction, share } = at
  const own = friction === null ? null : Math.abs(friction) * share
  const turns = (20 * speed) / (2 * Math.PI * 0.015)
  return {
    step,
    slidingSpeed: speed,
    friction,
    low: friction === null || own === null ? null : friction - 2.05 * own,
    high: friction === null || own === null ? null : friction + 2.05 * own,
    ownUncertainty: own,
    sharedUncertainty: friction === null ? null : Math.abs(friction) * (how.sharedShare ?? 0.0045),
    shared: {},
    degreesOfFreedom: 40,
    turns,
    duration: 20,
    torque: 0.015 * 8 * (friction ?? 0),
    axialForce: 8,
    gap: null,
    temperature: 298.15,
    autocorrelationTime: 4,
    frictionHarmonics: [],
    forceHarmonics: [],
    direction: how.direction ?? 1,
    trusted: friction !== null && (how.trusted?.(step) ?? true),
    rows: { from: 400 * (step - 1), to: 400 * step, kept: 380 },
    remarks: (how.remarks?.(step) ?? []).map((kind) => inventedRemark(kind, step)),
  }
}

export const inventedRemark = (kind: RemarkKind, step?: number): Remark => ({
  kind,
  seen: 0.12,
  limit: 0.1,
  unit: '',
  ...(step === undefined ? {} : { step }),
  sentence: 'The number seen is 0.12, over the limit of 0.10.',
  next: 'Look at the fixture.',
})

const grid = (from: number, to: number): readonly number[] =>
  Array.from({ length: 60 }, (_, index) => from * (to / from) ** (index / 59))

export function inventedCurve(from: number, to: number, friction: (speed: number) => number): Curve {
  return {
    model: 'stribeck',
    parameters: [{ name: 'h', value: 0.22, low: 0.2, high: 0.24, unit: '' }],
    features: [
      { name: 'boundaryLevel', value: 0.22, low: 0.2, high: 0.24, unit: '' },
      { name: 'mixedBegins', value: 0.0045, low: 0.0038, high: 0.0052, unit: 'm/s' },
      { name: 'filmBegins', value: 0.06, low: 0.05, high: 0.075, unit: 'm/s' },
      { name: 'minimumSpeed', value: 0.075, low: 0.07, high: 0.081, unit: 'm/s' },
      { name: 'minimumFriction', value: 0.0458, low: 0.0451, high: 0.0463, unit: '' },
      { name: 'filmSlope', value: null, low: null, high: null, unit: '', why: 'too few points beyond the minimum' },
    ],
    band: grid(from, to).map((speed) => {
      const middle = friction(speed)
      const half = 0.01 + 0.02 * Math.abs(Math.log10(speed / 0.03)) ** 2
      return { slidingSpeed: speed, friction: middle, low: middle * (1 - half), high: middle * (1 + half) }
    }),
    bandMethod: 'Bootstrap over steps, 1000 draws, 95 % at each speed.',
    end: { why: 'converged', gradientNorm: 1e-9, iterations: 12 },
    choices: [],
    correlations: [],
    chiSquared: 7.1,
    degreesOfFreedom: 7,
    extraScatter: 0,
    points: 11,
    remarks: [],
  }
}

export function inventedWindow(low: number | null, high: number | null): BelievableWindow {
  const limit = { seen: 0.1, limit: 0.02, unit: '', sentence: 'A limit.' }
  return {
    low,
    high,
    limits: [
      { ...limit, name: 'torqueFloor', end: 'low', slidingSpeed: low === null ? null : low * 0.6 },
      { ...limit, name: 'partialTurn', end: 'low', slidingSpeed: low },
      { ...limit, name: 'windUp', end: 'low', slidingSpeed: null },
      { ...limit, name: 'inertia', end: 'high', slidingSpeed: high },
    ],
    partialTurnBias: [1, 2, 3, 4].map((step) => ({ step, turns: 0.6 * step, bound: 0.12 / step ** 1.5 })),
    sentence: 'Believe this curve from 4.8 to 180 mm/s.',
    plateau: { verdict: 'doubtful', sentence: 'The slow plateau may be tilt: it rests on partial turns.' },
  }
}

/** Twelve steps of a lacquer for drawer runners, one remark here and there. */
export const twelve: CurveFigureData = {
  title: 'Lacquer B on beech, drawer runner (invented)',
  caption: 'three steel balls 6.35 mm on a track of 15 mm, 8 N, 25 °C · record drawer-b-1.csv',
  points: inventedPoints({
    from: 0.003,
    to: 0.3,
    count: 12,
    friction: stribeck,
    remarks: (step) => [
      'frictionRipple',
      ...(step < 3 ? (['underOneTurn', 'notSteady'] as const) : []),
      ...(step === 11 ? (['gapCreep'] as const) : []),
    ],
  }),
  curve: inventedCurve(0.003, 0.3, stribeck),
  window: inventedWindow(0.0048, 0.18),
  note: 'Invented data: no lab measured them.',
}

/** Up and down, fourteen speeds each, with little change of friction: a linear axis. */
export const twentyEight: CurveFigureData = {
  title: 'Lacquer A, up and down (invented)',
  points: [
    ...inventedPoints({
      from: 0.0005,
      to: 0.2,
      count: 14,
      friction: (speed) => 0.26 + 0.006 * Math.log(speed / 0.0005),
      ownShare: 0.002,
      remarks: (step) => (step < 5 ? ['underOneTurn'] : []),
    }),
    ...inventedPoints({
      from: 0.0005,
      to: 0.2,
      count: 14,
      direction: -1,
      firstStep: 15,
      friction: (speed) => 0.252 + 0.006 * Math.log(speed / 0.0005),
      ownShare: 0.002,
      remarks: (step) => [
        ...(step > 24 ? (['underOneTurn'] as const) : []),
        ...(step === 20 ? (['forceOffTarget', 'temperatureOff'] as const) : []),
      ],
    }),
  ],
  curve: null,
  window: { ...inventedWindow(0.002, 0.2), limits: [] },
}

/** Two steps: nothing to fit. */
export const two: CurveFigureData = {
  title: 'Oat drink on soft silicone, two speeds (invented)',
  points: inventedPoints({ from: 0.01, to: 0.1, count: 2, friction: stribeck, ownShare: 0.03 }),
  curve: null,
  window: null,
}

/** A record full of trouble: stick–slip, lost contact, a step without friction, a bar that leaves the plot. */
export const trouble: CurveFigureData = {
  title: 'A record full of trouble & "signs" <invented>',
  caption: 'three steel balls 6.35 mm on a track of 15 mm, 2 N, 25 °C',
  points: inventedPoints({
    from: 0.0001,
    to: 0.3,
    count: 18,
    friction: (speed, index) => (index === 16 ? null : index === 14 ? 0.004 : stribeck(speed)),
    ownShare: 0.02,
    sharedShare: 0.03,
    trusted: (step) => step > 6 && step < 15,
    remarks: (step) => [
      ...(step <= 4 ? (['belowTorqueFloor', 'underOneTurn', 'notSteady', 'frictionRipple'] as const) : []),
      ...(step > 4 && step <= 6 ? (['stickSlip', 'windUp'] as const) : []),
      ...(step === 15 || step === 17 ? (['contactLost', 'forceOffTarget'] as const) : []),
      ...(step === 18 ? (['inertia', 'drag', 'torqueAtCeiling'] as const) : []),
      'angleFromSpeed',
    ],
  }),
  curve: inventedCurve(0.0009, 0.1, stribeck),
  window: {
    ...inventedWindow(0.0013, 0.12),
    limits: [
      ...inventedWindow(0.0013, 0.12).limits,
      { name: 'drag', end: 'high', slidingSpeed: 0.19, seen: 0.04, limit: 0.02, unit: '', sentence: 'Drag.' },
      { name: 'contact', end: 'high', slidingSpeed: 0.12, seen: 0.1, limit: 0.5, unit: '', sentence: 'Contact.' },
      { name: 'forceZero', end: 'low', slidingSpeed: 0.0002, seen: 0.1, limit: 0.5, unit: '', sentence: 'Zero.' },
    ],
  },
  note: 'Invented data: no lab measured them. '.repeat(5),
}

/** No friction at all. */
export const nothing: CurveFigureData = {
  title: 'Nothing could be had (invented)',
  points: inventedPoints({ from: 0.001, to: 0.1, count: 5, friction: () => null, remarks: () => ['contactLost'] }),
  curve: null,
  window: inventedWindow(null, null),
}
