import { describe, expect, test } from 'vitest'
import type { Disturbances, VirtualRun } from '../../../src/core/rig/index.ts'
import { simulateRecord } from '../../../src/core/rig/index.ts'
import { tiltedFriction } from '../../../src/core/rig/plateTilt.ts'
import { column, constantFriction, frictions, mean, plainRun } from './plainRun.ts'

const degree = Math.PI / 180

const record = (run: VirtualRun) => simulateRecord(run, 1)

/** One step of 1 rad/s over exactly ten turns in a thousand samples. */
const tenTurns = (disturbances: Disturbances, friction = 0.2): VirtualRun =>
  plainRun({
    sheet: {
      speeds: { kind: 'list', speeds: [0.015] },
      dwell: { kind: 'time', seconds: 20 * Math.PI },
      samplingRate: 1000 / (20 * Math.PI),
    },
    friction: constantFriction(friction),
    disturbances,
  })

/** Amplitude of the part that comes back `order` times per turn, by projection over whole turns. */
function harmonic(values: ArrayLike<number>, angles: Float64Array, order: number): number {
  const part = (wave: (x: number) => number) => mean(Array.from(values, (x, i) => x * wave(order * angles[i])))
  return 2 * Math.hypot(part(Math.cos), part(Math.sin))
}

describe('plate tilt', () => {
  // Linear sliding on a slope, µ' = (µ cos β + sin β)/(cos β − µ sin β): forward, backward. Computed apart from this program.
  test.for([
    [0.05, 0.1, 0.05175, 0.04825],
    [0.05, 1, 0.06751, 0.03252],
    [0.01, 1, 0.02746, -0.00745],
    [0.1, 2, 0.13539, 0.06485],
  ])('friction %d on %d°', ([friction, angle, forward, backward]) => {
    const tilt = { angle: angle * degree, phase: 0, form: 'tangent', carriers: 1 } as const
    const at = (theta: number, direction: 1 | -1) => tiltedFriction(tilt, { friction, angle: theta, direction })
    expect(Math.abs(at(0, 1) - forward)).toBeLessThan(5.1e-6)
    expect(Math.abs(at(0, -1) - backward)).toBeLessThan(5.1e-6)
    expect(Math.abs(at(Math.PI, 1) - backward)).toBeLessThan(5.1e-6)
  })

  test('cosine form: amplitude tan β, and the mean over whole turns is the friction itself', () => {
    const run = tenTurns({ tilt: { angle: 0.3 * degree, phase: 0.4, form: 'cosine', carriers: 1 } })
    const seen = frictions(run)
    const angles = column(record(run).channels, 'angle')
    expect(mean(seen)).toBeCloseTo(0.2, 10)
    // 0.3° gives 0.0052 (common arithmetic, tan β).
    expect(harmonic(seen, angles, 1)).toBeCloseTo(0.005236, 6)
  })

  test('three contacts that share alike cancel the first order', () => {
    const run = tenTurns({ tilt: { angle: 1 * degree, phase: 0, form: 'tangent', carriers: 3 } })
    const angles = column(record(run).channels, 'angle')
    expect(harmonic(frictions(run), angles, 1)).toBeLessThan(1e-12)
  })
})

test('ripples come back with their order, amplitude and a mean of one', () => {
  const run = tenTurns({
    frictionRipple: [
      { order: 1, amplitude: 0.12, phase: 0 },
      { order: 3, amplitude: 0.02, phase: 1 },
    ],
    forceRipple: [{ order: 2, amplitude: 0.07, phase: 0.4 }],
  })
  const { channels } = record(run)
  const angles = column(channels, 'angle')
  const force = column(channels, 'axialForce')
  const seen = frictions(run)
  expect(mean(seen)).toBeCloseTo(0.2, 10)
  expect(mean(force)).toBeCloseTo(5, 10)
  expect(harmonic(seen, angles, 1) / 0.2).toBeCloseTo(0.12, 10)
  expect(harmonic(seen, angles, 3) / 0.2).toBeCloseTo(0.02, 10)
  expect(harmonic(force, angles, 2) / 5).toBeCloseTo(0.07, 10)
  expect(harmonic(force, angles, 1)).toBeLessThan(1e-12)
})

test('ripples of friction and force in step shift the ratio of means by half their product', () => {
  const run = tenTurns({
    frictionRipple: [{ order: 1, amplitude: 0.12, phase: 0 }],
    forceRipple: [{ order: 1, amplitude: 0.07, phase: 0.4 }],
  })
  const { channels } = record(run)
  const ratio = mean(column(channels, 'torque')) / (0.015 * mean(column(channels, 'axialForce')))
  // By the mean of a product of cosines over whole turns.
  expect(ratio).toBeCloseTo(0.2 * (1 + 0.5 * 0.12 * 0.07 * Math.cos(0.4)), 10)
})

test('gap run-out swings once per turn', () => {
  const { channels } = record(tenTurns({ gapRunOut: { amplitude: 1e-6, phase: 0.3 } }))
  const gap = column(channels, 'gap')
  expect(harmonic(gap, column(channels, 'angle'), 1)).toBeCloseTo(1e-6, 15)
  // The hundredth sample ends the first turn.
  expect(gap[99]).toBeCloseTo(1e-6 * Math.cos(0.3), 12)
})
