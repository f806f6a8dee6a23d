import { describe, expect, test } from 'vitest'
import {
  type BreakawayRun,
  conditionsFactor,
  familyLaw,
  gasConstant,
  simulateBreakaway,
  simulateRecord,
} from '../../../src/core/rig/index.ts'
import { plainRun } from './plainRun.ts'

const run: BreakawayRun = {
  fixture: plainRun().fixture,
  axialForce: 5,
  temperature: 296.15,
  samplingRate: 100,
  dwells: [2, 20],
  torqueRate: 2e-3,
  mostTorque: 0.05,
  stopAngle: 0.05,
  fastest: 1,
  inertia: 6e-5,
  torsionalStiffness: 25,
  creep: 0,
  friction: { level: 0.2, slope: 0.01, time: 1, kinetic: 0.15, scatter: 0 },
  noise: {},
}

describe('torque ramps', () => {
  const { channels, truth } = simulateBreakaway(run, 1)
  const column = (name: 'step' | 'torque' | 'angle' | 'time') => channels.read(name, 0, channels.rows)

  test('static friction is level + slope·ln(1 + t/τ)', () => {
    expect(truth.starts.map(({ staticFriction }) => staticFriction)).toEqual([
      expect.closeTo(0.2 + 0.01 * Math.log(3), 12),
      expect.closeTo(0.2 + 0.01 * Math.log(21), 12),
    ])
  })

  test('it stands until µ_s·c·r·F, twisting by M/k, and then runs away by ½(M_s − M_k)/I·t²', () => {
    const [step, torque, angle, time] = [column('step'), column('torque'), column('angle'), column('time')]
    const [first] = truth.starts
    const lever = 0.015
    for (let i = 0; i < channels.rows; i++) {
      if (step[i] !== 2) continue
      const since = time[i] - (first.at ?? 0)
      if (since < 0) expect(angle[i]).toBeCloseTo(torque[i] / 25, 12)
      else if (since < 0.005) {
        const surplus = (first.staticFriction - 0.15) * lever * 5
        const slid = angle[i] - torque[i] / 25
        expect(slid).toBeCloseTo((surplus * since ** 2) / 2 / 6e-5 + (2e-3 * since ** 3) / 6 / 6e-5, 9)
      }
    }
    expect(first.at).toBeCloseTo(2 + (first.staticFriction * lever * 5) / 2e-3, 9)
  })

  test('a ramp that ends before breakaway has not moved', () => {
    expect(simulateBreakaway({ ...run, mostTorque: 0.01 }, 1).truth.starts.map(({ moved, at }) => [moved, at])).toEqual(
      [
        [false, null],
        [false, null],
      ],
    )
  })

  test('the same seed gives the same record; rates of nothing are refused', () => {
    const again = simulateBreakaway(run, 1).channels
    expect(again.read('angle', 0, again.rows)).toEqual(column('angle'))
    expect(() => simulateBreakaway({ ...run, torqueRate: 0 }, 1)).toThrow(RangeError)
  })
})

describe('load and temperature', () => {
  const conditions = { loadExponent: 1 / 3, referenceForce: 1, activationEnergy: 20_000, referenceTemperature: 300 }

  test('at the references nothing changes; eight times the load halves friction at a = 1/3', () => {
    expect(conditionsFactor(conditions, 1, 300)).toBe(1)
    expect(conditionsFactor(conditions, 8, 300)).toBeCloseTo(0.5, 12)
  })

  test('an energy E lowers friction by exp(E/R·(1/T − 1/T₀))', () => {
    expect(conditionsFactor(conditions, 1, 330)).toBeCloseTo(Math.exp((20_000 / gasConstant) * (1 / 330 - 1 / 300)), 12)
    expect(() => conditionsFactor(conditions, 0, 300)).toThrow(RangeError)
  })
})

/** Friction of every row of one step at 50 mm/s without noise. */
function frictionOver(disturbances: Parameters<typeof simulateRecord>[0]['disturbances']): Float64Array {
  const { channels } = simulateRecord(
    plainRun({
      sheet: { speeds: { kind: 'list', speeds: [0.05] }, dwell: { kind: 'time', seconds: 100 } },
      friction: familyLaw('powerLaw', { k: 1, n: 0.5 }),
      disturbances,
    }),
    1,
  )
  return channels.read('torque', 0, channels.rows).map((torque) => torque / (0.015 * 5))
}

test('a coating fails at its distance and rises over its width', () => {
  const friction = frictionOver({ coatingFailure: { distance: 2, width: 1, friction: 0.6 } })
  const whole = Math.sqrt(0.05)
  expect(friction[300]).toBeCloseTo(whole, 9)
  // 2.5 m, that is 50 s: half way up; the row before counts.
  expect(Math.abs(friction[500] / ((whole + 0.6) / 2) - 1)).toBeLessThan(0.01)
  expect(friction[900]).toBeCloseTo(0.6, 9)
})

test('a viscosity that halves moves friction of v^0.5 by √0.5', () => {
  const friction = frictionOver({ liquidChange: { share: -0.5, timeConstant: 1 } })
  expect(friction[999]).toBeCloseTo(Math.sqrt(0.05 * 0.5), 9)
})
