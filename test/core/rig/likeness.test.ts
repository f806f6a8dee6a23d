import { describe, expect, test } from 'vitest'
import { simulateRecord } from '../../../src/core/rig/index.ts'
import type { Channels } from '../../../src/core/terms/index.ts'
import { near, noise, settled, up, usualLaw, usualNoise } from './likeRuns.ts'
import { column, deviation, lagOne, masterLaw, mean, plainRun } from './plainRun.ts'

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

const friction = (channels: Channels, rows: { from: number; to: number }): Float64Array => {
  const force = column(channels, 'axialForce', rows)
  return column(channels, 'torque', rows).map((torque, i) => torque / (0.015 * force[i]))
}

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
