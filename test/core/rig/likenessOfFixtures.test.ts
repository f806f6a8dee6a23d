import { expect, test } from 'vitest'
import { type SensorNoise, simulateRecord } from '../../../src/core/rig/index.ts'
import { near, settled, up, usualLaw, usualNoise } from './likeRuns.ts'
import { column, deviation, masterLaw, mean, plainRun } from './plainRun.ts'

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
