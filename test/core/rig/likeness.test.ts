import { describe, expect, test } from 'vitest'
import { type SensorNoise, simulateRecord, type TrueStep, type VirtualRun } from '../../../src/core/rig/index.ts'
import type { Channels } from '../../../src/core/terms/index.ts'
import { column, deviation, lagOne, masterLaw, mean, plainRun } from './plainRun.ts'

/**
 * Records that an independent simulator made from known parameters; `seen` are figures taken from those records with
 * NumPy (step means after 4 s, least-squares harmonics, spread of what is left). This rig must make the like.
 */

const noise = (torque: number, force: number, correlation: number): VirtualRun['rig']['noise'] => ({
  torque: { correlated: torque, correlation },
  axialForce: { correlated: force, correlation },
  gap: { white: 1e-7 },
  temperature: { white: 0.02 },
})
const usualNoise = noise(4e-6, 0.005, 0.6)
const usualLaw = masterLaw({ film: 0.09, n: 0.35, boundary: 0.22, v0: 0.008, m: 1.3 })
const up = (slowest: number, fastest: number, perDecade: number) =>
  ({ kind: 'range', slowest, fastest, perDecade, direction: 'up' }) as const

/** Harmonic of the first order by least squares, and what is left. */
function turnFit(values: Float64Array, angles: Float64Array): { mean: number; share: number; rest: number[] } {
  const rows = Array.from(angles, (angle, i) => [1, Math.cos(angle), Math.sin(angle), values[i]])
  const a = [0, 1, 2].map((i) => [0, 1, 2, 3].map((j) => rows.reduce((sum, row) => sum + row[i] * row[j], 0)))
  for (let i = 0; i < 3; i++) {
    for (let k = 0; k < 3; k++) {
      if (k === i) continue
      const f = a[k][i] / a[i][i]
      for (let j = i; j < 4; j++) a[k][j] -= f * a[i][j]
    }
  }
  const [c0, c1, c2] = [0, 1, 2].map((i) => a[i][3] / a[i][i])
  return {
    mean: c0,
    share: Math.hypot(c1, c2) / c0,
    rest: rows.map((row) => row[3] - c0 - c1 * row[1] - c2 * row[2]),
  }
}

const settled = (step: TrueStep, rate: number, wait: number) => ({ from: step.from + rate * wait, to: step.to })

const friction = (channels: Channels, rows: { from: number; to: number }): Float64Array => {
  const force = column(channels, 'axialForce', rows)
  return column(channels, 'torque', rows).map((torque, i) => torque / (0.015 * force[i]))
}

/** Standard error of the mean of an AR(1) series, times four. */
const near = (sd: number, correlation: number, n: number) =>
  4 * sd * Math.sqrt((1 + correlation) / (1 - correlation) / n)

describe('tilted plate: 12 % of friction and 7 % of force once per turn', () => {
  const { channels, truth } = simulateRecord(
    plainRun({
      rig: { riseTime: 0.25, noise: usualNoise },
      sheet: {
        speeds: up(0.003, 0.3, 5),
        dwell: { kind: 'time', seconds: 20 },
        samplingRate: 20,
        axialForce: 8,
      },
      friction: usualLaw,
      disturbances: {
        frictionRipple: [{ order: 1, amplitude: 0.12, phase: 0 }],
        forceRipple: [{ order: 1, amplitude: 0.07, phase: 0.4 }],
      },
    }),
    1101,
  )
  const rows = settled(truth.steps[8], 20, 3)
  const angles = column(channels, 'angle', rows)
  test('rows and true friction of step 9', () => {
    expect(channels.rows).toBe(4400)
    expect(truth.steps[8].friction).toBeCloseTo(0.04790253719696889, 12)
  })
  test('force ripple, its noise and memory', () => {
    const seen = { mean: 8.0000422, share: 0.0700257, sd: 0.0052273, lag: 0.5826 }
    const fit = turnFit(column(channels, 'axialForce', rows), angles)
    expect(Math.abs(fit.mean - seen.mean)).toBeLessThan(near(0.005, 0.6, 340) * Math.SQRT2)
    expect(Math.abs(fit.share - seen.share)).toBeLessThan((near(0.005, 0.6, 340) * 2) / 8)
    expect(Math.abs(deviation(fit.rest) / seen.sd - 1)).toBeLessThan(0.25)
    expect(Math.abs(lagOne(fit.rest) - seen.lag)).toBeLessThan(0.2)
  })
  test('friction ripple', () => {
    const fit = turnFit(friction(channels, rows), angles)
    expect(Math.abs(fit.share - 0.1199962)).toBeLessThan((near(4.2e-5, 0.6, 340) * 2) / 0.0479)
    expect(Math.abs(deviation(fit.rest) / 4.2428e-5 - 1)).toBeLessThan(0.25)
  })
})

test('stick-slip: saw-tooth of 25 % at 1.7 a second below 2 mm/s', () => {
  const { channels, truth } = simulateRecord(
    plainRun({
      rig: { riseTime: 0.25, noise: usualNoise },
      sheet: {
        speeds: up(2e-4, 0.05, 4),
        dwell: { kind: 'time', seconds: 8 },
        samplingRate: 50,
        axialForce: 6,
      },
      friction: usualLaw,
      disturbances: { stickSlip: { kind: 'sawTooth', below: 0.002, frequency: 1.7, share: 0.25 } },
    }),
    1105,
  )
  expect(channels.rows).toBe(4400)
  // Step: mean, least, most friction and falls of over 0.05 in 6 s.
  const seen: [number, number, number, number, number][] = [
    [2, 0.2157441, 0.1627783, 0.2701803, 10],
    [4, 0.2056138, 0.1548623, 0.2576667, 10],
    [5, 0.1935868, 0.1449704, 0.2409114, 11],
    [6, 0.1721059, 0.1717765, 0.1725268, 0],
  ]
  for (const [number, average, least, most, falls] of seen) {
    const mu = friction(channels, settled(truth.steps[number - 1], 50, 2))
    expect(Math.abs(mean(mu) / average - 1)).toBeLessThan(0.02)
    expect(Math.abs(Math.min(...mu) / least - 1)).toBeLessThan(0.03)
    expect(Math.abs(Math.max(...mu) / most - 1)).toBeLessThan(0.03)
    expect(Math.abs(mu.slice(1).filter((x, i) => x < mu[i] - 0.05).length - falls)).toBeLessThanOrEqual(1)
  }
})

test('overload: torque held at 0.2 N·m, then free of it', () => {
  const { channels, truth } = simulateRecord(
    plainRun({
      rig: { riseTime: 0.25, noise: usualNoise, torqueCeiling: 0.2 },
      sheet: { speeds: up(1e-3, 0.1, 4), dwell: { kind: 'time', seconds: 12 }, axialForce: 20 },
      friction: masterLaw({ film: 0.5, n: 0.02, boundary: 0.75, v0: 0.003, m: 0.9 }),
    }),
    1104,
  )
  // Step: mean torque and its spread after 4 s.
  const seen: [number, number, number][] = [
    [1, 0.19941518, 3.67e-6],
    [5, 0.15909975, 4.0e-6],
    [9, 0.14658996, 3.98e-6],
  ]
  for (const [number, average, spread] of seen) {
    const torque = column(channels, 'torque', settled(truth.steps[number - 1], 10, 4))
    expect(Math.abs(mean(torque) - average)).toBeLessThan(near(4e-6, 0.6, 80) * Math.SQRT2)
    expect(Math.abs(deviation(torque) / spread - 1)).toBeLessThan(0.5)
  }
  const clipped = column(channels, 'torque', truth.steps[0]).filter((x) => x >= 0.19999).length
  expect(clipped).toBe(8)
})

test('lost contact: 6 s of step 7 at 15 % of the force', () => {
  const { channels } = simulateRecord(
    plainRun({
      rig: { riseTime: 0.25, noise: usualNoise },
      sheet: { speeds: up(1e-4, 0.3, 5), dwell: { kind: 'time', seconds: 12 }, axialForce: 4 },
      friction: usualLaw,
      disturbances: { lostContact: [{ step: 7, from: 3, to: 9, share: 0.15 }] },
    }),
    1103,
  )
  expect(channels.rows).toBe(2160)
  const force = column(channels, 'axialForce')
  const lost = Array.from(force.keys()).filter((i) => force[i] < 2)
  expect(lost.length).toBe(60)
  expect(Math.abs(column(channels, 'time')[lost[0]] - 75.1)).toBeLessThanOrEqual(0.11)
  expect(Math.abs(mean(lost.map((i) => force[i])) - 0.600665)).toBeLessThan(near(0.005, 0.6, 60) * Math.SQRT2)
})

test('near the torque floor: blank, residual torque, zero and drift of force', () => {
  const { channels, truth } = simulateRecord(
    plainRun({
      rig: {
        riseTime: 0.25,
        noise: noise(8e-6, 0.006, 0.8),
        residualTorque: { level: 1.2e-5, perSpeed: 1.5e-6 },
        forceZero: { level: -0.03, perSecond: 2e-5 },
      },
      sheet: {
        speeds: up(1e-4, 0.3, 5),
        dwell: { kind: 'time', seconds: 12 },
        axialForce: 0.5,
        blankBefore: true,
        lift: 2e-3,
      },
      friction: masterLaw({ film: 0.02, n: 0.3, boundary: 0.006, v0: 0.005, m: 1 }),
    }),
    1102,
  )
  expect(truth.rows).toBe(4320)
  // Step: means of torque, axial force and gap after 4 s.
  const seen: [number, number, number, number][] = [
    [5, 1.30169e-5, -0.0259738, 2e-3],
    [18, 3.81993e-5, -0.0289991, 2e-3],
    [23, 5.00536e-5, 0.471401, 0],
    [36, 1.436279e-4, 0.477065, 0],
  ]
  for (const [number, torque, force, gap] of seen) {
    const rows = settled(truth.steps[number - 1], 10, 4)
    expect(Math.abs(mean(column(channels, 'torque', rows)) - torque)).toBeLessThan(near(8e-6, 0.8, 80) * Math.SQRT2)
    expect(Math.abs(mean(column(channels, 'axialForce', rows)) - force)).toBeLessThan(near(6e-3, 0.8, 80) * Math.SQRT2)
    expect(Math.abs(mean(column(channels, 'gap', rows)) - gap)).toBeLessThan(1e-6)
  }
})

test('ball on three plates with a blank, and a ring with inertia: torques of other fixtures', () => {
  const quiet: SensorNoise = { correlated: 1.5e-6, correlation: 0.5 }
  const oat = simulateRecord(
    plainRun({
      fixture: {
        kind: 'ballOnPlates',
        plates: 3,
        ballDiameter: 0.0127,
        ballDiameterUncertainty: 0,
        inclination: Math.PI / 4,
        inclinationUncertainty: 0,
      },
      rig: {
        riseTime: 0.25,
        noise: { torque: quiet, axialForce: { correlated: 0.004, correlation: 0.5 } },
        residualTorque: { level: 3e-6, perSpeed: 4e-7 },
        forceZero: { level: 0.02, perSecond: 0 },
      },
      sheet: { speeds: up(2e-4, 0.4, 6), dwell: { kind: 'time', seconds: 12 }, axialForce: 3, blankBefore: true },
      friction: masterLaw({ film: 0.11, n: 0.4, boundary: 0.42, v0: 0.006, m: 1.4 }),
    }),
    1100,
  )
  // Step: means of torque and axial force after 4 s.
  const seen: [number, number, number][] = [
    [5, 3.0415e-6, 0.0195208],
    [21, 3.83778e-5, 0.0193881],
    [26, 7.4767912e-3, 3.0203938],
    [42, 1.5096393e-3, 3.0209096],
  ]
  for (const [number, torque, force] of seen) {
    const rows = settled(oat.truth.steps[number - 1], 10, 4)
    expect(Math.abs(mean(column(oat.channels, 'torque', rows)) - torque)).toBeLessThan(
      near(1.5e-6, 0.5, 80) * Math.SQRT2,
    )
    expect(Math.abs(mean(column(oat.channels, 'axialForce', rows)) - force)).toBeLessThan(
      near(4e-3, 0.5, 80) * Math.SQRT2,
    )
  }

  const ring = simulateRecord(
    plainRun({
      fixture: {
        kind: 'ringOnPlate',
        outerRadius: 0.015,
        innerRadius: 0.013,
        segments: 1,
        pressure: 'uniformWear',
        radiusUncertainty: 0,
      },
      rig: { riseTime: 0.25, noise: usualNoise, inertia: 2e-5 },
      sheet: { speeds: up(1e-3, 1, 4), dwell: { kind: 'time', seconds: 12 }, axialForce: 10 },
      friction: masterLaw({ film: 0.16, n: 0.3, boundary: 0.12, v0: 0.01, m: 1.2 }),
    }),
    1106,
  )
  expect(ring.channels.rows).toBe(1560)
  for (const [number, torque] of [
    [1, 0.0159698011],
    [8, 0.0102674924],
    [13, 0.0223769501],
  ]) {
    const rows = settled(ring.truth.steps[number - 1], 10, 4)
    expect(Math.abs(mean(column(ring.channels, 'torque', rows)) - torque)).toBeLessThan(
      near(4e-6, 0.6, 80) * Math.SQRT2,
    )
  }
})

test('wearing ball: the gap falls by 2 µm per metre', () => {
  const { channels } = simulateRecord(
    plainRun({
      rig: { riseTime: 0.25, noise: usualNoise },
      sheet: {
        speeds: { kind: 'list', speeds: [0.05, 0.05001] },
        dwell: { kind: 'time', seconds: 300 },
        samplingRate: 5,
        axialForce: 10,
      },
      friction: usualLaw,
      disturbances: { wear: { kind: 'perDistance', rate: 2e-6 }, gapRunOut: { amplitude: 1e-6, phase: 0 } },
    }),
    1108,
  )
  const slid = column(channels, 'angle').map((angle) => angle * 0.015)
  const gap = column(channels, 'gap')
  const [x, y] = [mean(slid), mean(gap)]
  const slope =
    slid.reduce((sum, s, i) => sum + (s - x) * (gap[i] - y), 0) / slid.reduce((sum, s) => sum + (s - x) ** 2, 0)
  expect(Math.abs(slope / -1.99992e-6 - 1)).toBeLessThan(0.005)
  expect(Math.abs(deviation(gap.map((g, i) => g - y - slope * (slid[i] - x))) / 7.1376e-7 - 1)).toBeLessThan(0.05)
})
