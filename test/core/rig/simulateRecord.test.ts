import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fixtureGeometry, frictionFromTorque } from '../../../src/core/fixture/index.ts'
import { simulateChunks, simulateRecord, type VirtualRun } from '../../../src/core/rig/index.ts'
import type { FixtureSpec } from '../../../src/core/terms/index.ts'
import { column, constantFriction, masterLaw, mean, plainRun } from './plainRun.ts'

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const fixtures: Record<FixtureSpec['kind'], fc.Arbitrary<FixtureSpec>> = {
  ballsOnPlate: fc.record({
    kind: fc.constant('ballsOnPlate' as const),
    balls: fc.integer({ min: 1, max: 7 }),
    ballDiameter: length(1e-3, 8e-3),
    trackRadius: length(0.01, 0.03),
    trackRadiusUncertainty: fc.constant(0),
  }),
  ballOnPlates: fc.record({
    kind: fc.constant('ballOnPlates' as const),
    plates: fc.integer({ min: 3, max: 4 }),
    ballDiameter: length(5e-3, 0.03),
    ballDiameterUncertainty: fc.constant(0),
    inclination: length(0.3, 1.2),
    inclinationUncertainty: fc.constant(0),
  }),
  ballOnBalls: fc.record({
    kind: fc.constant('ballOnBalls' as const),
    ballDiameter: length(5e-3, 0.03),
    ballDiameterUncertainty: fc.constant(0),
  }),
  ringOnPlate: fc.record({
    kind: fc.constant('ringOnPlate' as const),
    outerRadius: length(0.013, 0.025),
    innerRadius: length(0.005, 0.012),
    segments: fc.integer({ min: 1, max: 6 }),
    pressure: fc.constantFrom('uniformPressure' as const, 'uniformWear' as const),
    radiusUncertainty: fc.constant(0),
  }),
  discOnPlate: fc.record({
    kind: fc.constant('discOnPlate' as const),
    radius: length(5e-3, 0.025),
    pressure: fc.constantFrom('uniformPressure' as const, 'uniformWear' as const),
    radiusUncertainty: fc.constant(0),
  }),
  pinsOnDisc: fc.record({
    kind: fc.constant('pinsOnDisc' as const),
    pins: fc.integer({ min: 1, max: 4 }),
    pinDiameter: length(1e-3, 5e-3),
    trackRadius: length(0.01, 0.03),
    trackRadiusUncertainty: fc.constant(0),
  }),
}

/** Ratio of means over the rows of each sliding step. */
function plainFriction(run: VirtualRun): { seen: number; truth: number }[] {
  const { channels, truth } = simulateRecord(run, 1)
  const geometry = fixtureGeometry(run.fixture)
  return truth.steps.map((step) => ({
    seen: frictionFromTorque(
      geometry,
      mean(column(channels, 'torque', step)),
      mean(column(channels, 'axialForce', step)),
    ),
    truth: step.friction ?? Number.NaN,
  }))
}

describe('forwards, then plainly backwards', () => {
  test.for(Object.entries(fixtures))('%s returns the friction that went in', ([, specs]) => {
    fc.assert(
      fc.property(
        specs,
        fc.double({ min: 1e-4, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (fixture, level, axialForce) => {
          const speeds = { kind: 'range', slowest: 1e-3, fastest: 0.5, perDecade: 1, direction: 'upAndDown' } as const
          const law = masterLaw({ film: 0.09, n: 0.35, boundary: level, v0: 0.008, m: 1.3 })
          const run = plainRun({ fixture, friction: law, sheet: { axialForce, speeds } })
          const points = plainFriction(run)
          return points.length === 8 && points.every(({ seen, truth }) => Math.abs(seen / truth - 1) < 1e-9)
        },
      ),
      { numRuns: 30 },
    )
  })

  test('turning backwards turns the sign of the torque', () => {
    const { channels } = simulateRecord(plainRun({ sheet: { speeds: { kind: 'list', speeds: [-0.01] } } }), 1)
    expect(mean(column(channels, 'torque'))).toBeCloseTo(-0.2 * 0.015 * 5, 12)
  })
})

const noisy = plainRun({
  rig: {
    noise: {
      torque: { white: 1e-6, correlated: 4e-6, correlation: 0.6 },
      axialForce: { correlated: 0.005, correlation: 0.9 },
      gap: { white: 1e-7 },
      temperature: { white: 0.02, resolution: 0.01 },
    },
    riseTime: 0.25,
    torsionalStiffness: 10,
    inertia: 1e-5,
  },
  sheet: { speeds: { kind: 'list', speeds: [0.001, 0.01, 0.1] }, blankBefore: true },
  disturbances: {
    stickSlip: { kind: 'sawTooth', below: 0.005, frequency: 1.7, share: 0.2 },
    wear: { kind: 'archard', specificRate: 1e-14 },
  },
})

describe('chance', () => {
  const columns = (seed: number, run = noisy) =>
    run.columns.map((name) => Array.from(column(simulateRecord(run, seed).channels, name)))

  test('the same seed gives the same record, bit for bit', () => expect(columns(5)).toEqual(columns(5)))

  test('another seed gives another', () => {
    const torque = noisy.columns.indexOf('torque')
    expect(columns(5)[torque]).not.toEqual(columns(6)[torque])
  })

  test('how it is cut changes no number', () => {
    const whole = columns(5)
    for (const rows of [1, 7, 100, 599]) {
      const pieces = [...simulateChunks(noisy, 5, rows)]
      expect(noisy.columns.map((name) => pieces.flatMap((piece) => Array.from(column(piece, name))))).toEqual(whole)
    }
  })

  test('noise of one channel leaves the others as they were', () => {
    const quiet = { ...noisy, rig: { ...noisy.rig, noise: { ...noisy.rig.noise, torque: undefined } } }
    const force = noisy.columns.indexOf('axialForce')
    expect(columns(5, quiet)[force]).toEqual(columns(5)[force])
  })
})

test('torque never passes the ceiling', () => {
  const run = plainRun({
    friction: constantFriction(0.3),
    rig: { torqueCeiling: 0.0225, noise: { torque: { white: 1e-3, resolution: 1e-4 } } },
    sheet: { speeds: { kind: 'list', speeds: [0.01, -0.01] }, dwell: { kind: 'time', seconds: 100 } },
  })
  const torque = column(simulateRecord(run, 3).channels, 'torque')
  expect(Math.max(...torque)).toBe(0.0225)
  expect(Math.min(...torque)).toBe(-0.0225)
  const atCeiling = Array.from(torque).filter((x) => Math.abs(x) === 0.0225).length
  expect(atCeiling / torque.length).toBeGreaterThan(0.4)
})

test('columns are those asked for; derived ones follow from the lever', () => {
  const run = plainRun({ columns: ['time', 'slidingSpeed', 'frictionForce'] })
  const { channels } = simulateRecord(run, 1)
  expect(channels.names).toEqual(['time', 'slidingSpeed', 'frictionForce'])
  expect(column(channels, 'slidingSpeed')[5]).toBeCloseTo(0.01, 15)
  expect(column(channels, 'frictionForce')[5]).toBeCloseTo(1, 15)
})

test('truth is plain data with speeds and friction of the law', () => {
  const { truth } = simulateRecord(noisy, 5)
  expect(truth.steps.map(({ kind, friction }) => [kind, friction])).toEqual([
    ...Array(3).fill(['blank', null]),
    ...Array(3).fill(['slide', 0.2]),
  ])
  expect(truth.steps[4]).toMatchObject({ number: 5, slidingSpeed: 0.01, from: 400, to: 500 })
  expect(JSON.parse(JSON.stringify(truth)).run.friction).toEqual({ model: 'plateau', parameters: { level: 0.2 } })
})

test('nonsense is refused', () => {
  expect(() => simulateRecord(plainRun({ columns: [] }), 1)).toThrow('columns')
  expect(() => simulateRecord(plainRun({ sheet: { samplingRate: Number.NaN } }), 1)).toThrow('samplingRate')
  expect(() => simulateRecord(plainRun({ sheet: { dwell: { kind: 'time', seconds: 0 } } }), 1)).toThrow('last')
  expect(() => simulateRecord(plainRun({ sheet: { speeds: { kind: 'list', speeds: [] } } }), 1)).toThrow('speeds')
  expect(() => simulateRecord(plainRun({ friction: constantFriction(Number.NaN) }), 1)).toThrow('friction')
  expect(() => simulateRecord(plainRun({ rig: { torqueCeiling: 0 } }), 1)).toThrow('N·m')
})
