import { describe, expect, test } from 'vitest'
import type { Disturbances, VirtualRun } from '../../../src/core/rig/index.ts'
import { simulateRecord } from '../../../src/core/rig/index.ts'
import { column, frictions, mean, plainRun } from './plainRun.ts'

const record = (run: VirtualRun) => simulateRecord(run, 1)

describe('stick and slip', () => {
  const slow = (stickSlip: Disturbances['stickSlip'], rig: Partial<VirtualRun['rig']> = {}) =>
    plainRun({
      rig,
      sheet: {
        speeds: { kind: 'list', speeds: [0.001, 0.01] },
        samplingRate: 2000,
        dwell: { kind: 'time', seconds: 20 },
      },
      disturbances: { stickSlip },
    })

  test('saw-tooth: as many falls as asked, of twice the share, friction true in the mean, none when fast', () => {
    const seen = frictions(slow({ kind: 'sawTooth', below: 0.002, frequency: 1.7, share: 0.25 }))
    const falls = seen.slice(1).map((x, i) => seen[i] - x)
    expect(falls.filter((fall) => fall > 0.02)).toHaveLength(34)
    expect(Math.max(...falls) / 0.2).toBeCloseTo(0.5, 2)
    expect(mean(seen.slice(0, 40_000))).toBeCloseTo(0.2, 4)
    expect(Math.max(...seen.slice(40_000))).toBe(Math.min(...seen.slice(40_000)))
  })

  test('spring: frequency by the closed form of the oscillator', () => {
    // k 1e4 N/m, m 0.05 kg, ΔF 0.5 N at 1 mm/s: 9.326211 a second (derived, computed apart from this program).
    const rig = { torsionalStiffness: 1e4 * 0.015 ** 2, inertia: 0.05 * 0.015 ** 2 }
    const run = slow({ kind: 'spring', staticExcess: 0.5, dampingRatio: 0.01 }, rig)
    const seen = frictions(run).slice(200, 40_000)
    const upward = seen.slice(1).filter((x, i) => seen[i] < 0.2 && x >= 0.2).length
    expect(Math.abs(upward / 19.9 - 9.326211)).toBeLessThan(1 / 19.9)
    expect(Math.max(...seen)).toBeCloseTo(0.3, 2)
    expect(Math.min(...seen)).toBeCloseTo(0.1, 2)
  })

  test('a spring needs a shaft', () => {
    expect(() => record(slow({ kind: 'spring', staticExcess: 0.5, dampingRatio: 0 }))).toThrow('stiffness')
  })
})

test('lost contact leaves a share of the force for its stretch, and of the torque with it', () => {
  const { channels } = record(plainRun({ disturbances: { lostContact: [{ step: 1, from: 3, to: 9, share: 0.15 }] } }))
  const force = column(channels, 'axialForce')
  const lost = Array.from(force.keys()).filter((i) => force[i] < 4)
  expect(lost).toHaveLength(60)
  expect(force[lost[0]]).toBeCloseTo(0.75, 12)
  expect(column(channels, 'torque')[lost[0]]).toBeCloseTo(0.2 * 0.015 * 0.75, 12)
})

describe('wear closes the gap', () => {
  const fall = (wear: Disturbances['wear'], fixture = plainRun().fixture, riseTime = 0) => {
    const { channels } = record(
      plainRun({
        fixture,
        rig: { riseTime },
        sheet: { speeds: { kind: 'list', speeds: [0.05] }, dwell: { kind: 'time', seconds: 20 } },
        disturbances: { wear },
      }),
    )
    return -column(channels, 'gap')[199]
  }
  test('per distance', () => expect(fall({ kind: 'perDistance', rate: 2e-6 })).toBeCloseTo(2e-6, 14))
  test('Archard, balls: three caps of V = k·W·s each; 1e-12 m³/(N·m), 5/3 N, 1 m', () => {
    const cap = Math.sqrt((1e-12 * (5 / 3)) / (Math.PI * 3.175e-3))
    expect(fall({ kind: 'archard', specificRate: 1e-12 })).toBeCloseTo(cap, 12)
  })
  test('Archard, inclined contacts: the ball sinks by the depth over cos α', () => {
    const ball = { ballDiameter: 12.7e-3, ballDiameterUncertainty: 0 }
    const plates = {
      kind: 'ballOnPlates',
      plates: 3,
      ...ball,
      inclination: Math.PI / 3,
      inclinationUncertainty: 0,
    } as const
    // Each of three contacts bears F/(3 cos α) over 1 m.
    const cap = (cosine: number) => Math.sqrt((1e-12 * 5) / (3 * cosine) / (Math.PI * 6.35e-3)) / cosine
    expect(fall({ kind: 'archard', specificRate: 1e-12 }, plates)).toBeCloseTo(cap(0.5), 12)
    const balls = fall({ kind: 'archard', specificRate: 1e-12 }, { kind: 'ballOnBalls', ...ball })
    expect(balls).toBeCloseTo(cap(Math.sqrt(2 / 3)), 12)
  })
  test('Archard, disc and domed pins', () => {
    const disc = { kind: 'discOnPlate', radius: 0.01, pressure: 'uniformWear', radiusUncertainty: 0 } as const
    expect(fall({ kind: 'archard', specificRate: 1e-12 }, disc)).toBeCloseTo((1e-12 * 5) / (Math.PI * 1e-4), 14)
    const track = { trackRadius: 0.015, trackRadiusUncertainty: 0 }
    const pins = { kind: 'pinsOnDisc', pins: 2, pinDiameter: 4e-3, endRadius: 0.05, ...track } as const
    const cap = Math.sqrt((1e-12 * 2.5) / (Math.PI * 0.05))
    expect(fall({ kind: 'archard', specificRate: 1e-12 }, pins)).toBeCloseTo(cap, 12)
  })
  test('Archard, flat pins: an even layer', () => {
    const fixture = {
      kind: 'pinsOnDisc',
      pins: 2,
      pinDiameter: 4e-3,
      trackRadius: 0.015,
      trackRadiusUncertainty: 0,
    } as const
    expect(fall({ kind: 'archard', specificRate: 1e-12 }, fixture)).toBeCloseTo(
      (1e-12 * 2.5) / ((Math.PI / 4) * 16e-6),
      14,
    )
  })
  test('Archard, ring: segments share load and area', () => {
    const ring = {
      kind: 'ringOnPlate',
      outerRadius: 0.015,
      innerRadius: 0.013,
      pressure: 'uniformWear',
      radiusUncertainty: 0,
    } as const
    const whole = fall({ kind: 'archard', specificRate: 1e-12 }, { ...ring, segments: 1 })
    expect(whole).toBeCloseTo((1e-12 * 5) / (Math.PI * (225e-6 - 169e-6)), 14)
    expect(fall({ kind: 'archard', specificRate: 1e-12 }, { ...ring, segments: 4 })).toBeCloseTo(whole, 14)
  })
})

test('warming moves the temperature and closes the gap by the growth of the shaft', () => {
  const { channels } = record(
    plainRun({ disturbances: { thermalDrift: { change: 2, timeConstant: 5, growth: 1.5e-6 } } }),
  )
  const warmed = 2 * (1 - Math.exp(-2))
  expect(column(channels, 'temperature')[99]).toBeCloseTo(298.15 + warmed, 10)
  expect(column(channels, 'gap')[99]).toBeCloseTo(-1.5e-6 * warmed, 14)
})

test('running-in dies away over its distance', () => {
  const seen = frictions(plainRun({ disturbances: { runningIn: { excess: 0.5, distance: 0.02 } } }))
  // The first sample has slid nothing yet, the last 99 intervals of 1 mm.
  expect(seen[0]).toBeCloseTo(0.3, 12)
  expect(seen[99]).toBeCloseTo(0.2 * (1 + 0.5 * Math.exp(-0.099 / 0.02)), 12)
})

describe('wind-up of the shaft', () => {
  const run = plainRun({
    rig: { torsionalStiffness: 0.05 },
    sheet: { speeds: { kind: 'list', speeds: [0.0015] }, blankBefore: true },
  })
  const { channels } = record(run)
  const torque = column(channels, 'torque').slice(100)
  test('torque first grows as stiffness times angle, then stays at friction', () => {
    // 0.015 N·m of friction need 0.3 rad of twist: 3 s at 0.1 rad/s.
    expect(torque[9]).toBeCloseTo(0.05 * 0.1 * 1, 12)
    expect(torque[40]).toBeCloseTo(0.015, 12)
    const sliding = Array.from(torque).findIndex((x) => x > 0.015 - 1e-9)
    expect(Math.abs((sliding + 1) / 10 - 3)).toBeLessThan(0.11)
  })
  test('what turns with the fixture lags the motor by the twist', () => {
    const swinging = record({ ...run, disturbances: { gapRunOut: { amplitude: 1e-6, phase: 0 } } }).channels
    const [gap, angle] = [column(swinging, 'gap'), column(swinging, 'angle')]
    expect(gap[199]).toBeCloseTo(1e-6 * Math.cos(angle[199] - 0.3), 12)
  })
  test('lifted, it is slack', () => expect(column(channels, 'torque')[99]).toBe(0))
})

describe('what the rig adds by itself', () => {
  test('residual torque and force zero stand in blank and sliding alike', () => {
    const run = plainRun({
      rig: { residualTorque: { level: 1e-5, perSpeed: 2e-6 }, forceZero: { level: -0.03, perSecond: 1e-4 } },
      sheet: { speeds: { kind: 'list', speeds: [0.15] }, blankBefore: true, blankAfter: true, lift: 2e-3 },
    })
    const { channels } = record(run)
    const [torque, force, gap] = (['torque', 'axialForce', 'gap'] as const).map((name) => column(channels, name))
    expect(torque[50]).toBeCloseTo(1e-5 + 2e-5, 14)
    expect(torque[150] - torque[50]).toBeCloseTo(0.015, 12)
    expect(force[0]).toBeCloseTo(-0.03 + 1e-5, 12)
    expect(force[299]).toBeCloseTo(-0.03 + 3e-3, 12)
    expect(force[199]).toBeCloseTo(5 - 0.03 + 2e-3, 12)
    expect([gap[50], gap[150], gap[250]]).toEqual([2e-3, 0, 2e-3])
  })

  test('inertia adds I·dΩ/dt on a ramp', () => {
    const run = plainRun({
      rig: { inertia: 2e-5, residualTorque: { level: 1e-4, perSpeed: 0 } },
      sheet: {
        speeds: { kind: 'ramp', slowest: 0.015, fastest: 0.165, duration: 5, law: 'linear', direction: 'up' },
      },
    })
    // 10 rad/s in 5 s.
    const { channels, truth } = record(run)
    expect(column(channels, 'torque')[20]).toBeCloseTo(0.015 + 1e-4 + 2e-5 * 2, 12)
    expect(truth.steps).toEqual([{ number: 1, kind: 'ramp', slidingSpeed: 0.015, friction: null, from: 0, to: 50 }])
  })
})
