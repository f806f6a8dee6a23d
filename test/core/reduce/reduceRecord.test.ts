import { describe, expect, test } from 'vitest'
import { reduceRecord } from '../../../src/core/reduce/index.ts'
import { channelsInMemory, type FixtureSpec, type Setup } from '../../../src/core/terms/index.ts'
import { reduced, threeBalls } from './virtualRuns.ts'

const diameter = { ballDiameter: 0.0127, ballDiameterUncertainty: 0 }
const fixtures: readonly FixtureSpec[] = [
  threeBalls,
  { ...threeBalls, balls: 1 },
  { kind: 'ballOnPlates', plates: 3, ...diameter, inclination: Math.PI / 4, inclinationUncertainty: 0 },
  { kind: 'ballOnBalls', ...diameter },
  {
    kind: 'ringOnPlate',
    outerRadius: 0.015,
    innerRadius: 0.013,
    segments: 1,
    pressure: 'uniformWear',
    radiusUncertainty: 0,
  },
  { kind: 'discOnPlate', radius: 0.02, pressure: 'uniformPressure', radiusUncertainty: 0 },
  { kind: 'pinsOnDisc', pins: 3, pinDiameter: 0.004, trackRadius: 0.015, trackRadiusUncertainty: 0 },
]

describe('forwards and back: the friction that went in comes out inside its interval', () => {
  test.for(fixtures)('$kind', (fixture) => {
    const { reduction, friction } = reduced({ fixture })
    expect(reduction.points.length).toBe(friction.length)
    reduction.points.forEach((point, i) => {
      const off = Math.abs((point.friction ?? Number.NaN) - (friction[i] ?? Number.NaN))
      expect(off / (point.ownUncertainty ?? 0)).toBeLessThan(4)
      expect(off / (friction[i] ?? 0)).toBeLessThan(5e-3)
    })
  })

  test('without noise to one part in 10⁵, once the speed has settled', () => {
    const { reduction, friction } = reduced({ rig: { noise: {}, riseTime: 0 } })
    reduction.points.forEach((point, i) => {
      expect(Math.abs((point.friction ?? 0) / (friction[i] ?? 1) - 1)).toBeLessThan(1e-5)
    })
  })
})

describe('zeroes and blank', () => {
  const wish = {
    rig: { forceZero: { level: 0.2, perSecond: 0 }, residualTorque: { level: 5e-5, perSpeed: 4e-5 } },
    sheet: { blankBefore: true },
  } as const

  test('force zero, torque level and drag are found and taken off', () => {
    const { reduction, friction } = reduced(wish)
    expect(reduction.forceZero.from).toBe('blank')
    expect(reduction.forceZero.level).toBeCloseTo(0.2, 2)
    expect(reduction.torqueBlank.level).toBeCloseTo(5e-5, 6)
    expect(reduction.torqueBlank.perSpeed).toBeCloseTo(4e-5, 6)
    reduction.points.forEach((point, i) => {
      expect(Math.abs((point.friction ?? 0) / (friction[i] ?? 1) - 1)).toBeLessThan(5e-3)
    })
  })

  test('an inertia that the setup knows does not spoil the blank', () => {
    const inertia = 2e-5
    const { reduction, friction } = reduced({
      ...wish,
      rig: { ...wish.rig, inertia, residualTorque: { level: 3e-6, perSpeed: 4e-7 } },
      setup: (setup) => ({ ...setup, rig: { ...setup.rig, inertia } }),
    })
    expect(Math.abs(reduction.torqueBlank.level - 3e-6)).toBeLessThan(1e-6)
    expect(reduction.torqueBlank.perSpeed).toBeCloseTo(4e-7, 6)
    reduction.points.forEach((point, i) => {
      expect(Math.abs((point.friction ?? 0) / (friction[i] ?? 1) - 1)).toBeLessThan(5e-3)
    })
  })

  test('without the blank the same record is off by the zero, and says that there was none', () => {
    const { reduction, friction } = reduced({ rig: wish.rig })
    expect(reduction.remarks.map((remark) => remark.kind)).toContain('forceZeroMissing')
    expect((reduction.points[0].friction ?? 0) / (friction[0] ?? 1)).toBeLessThan(0.97)
  })

  test('a drift between two blanks is followed', () => {
    const { reduction } = reduced({
      sheet: { blankBefore: true, blankAfter: true },
      rig: { forceZero: { level: 0.1, perSecond: 2e-4 } },
    })
    expect(reduction.forceZero.from).toBe('blankBeforeAndAfter')
    expect(reduction.forceZero.slope).toBeCloseTo(2e-4, 5)
    expect(reduction.remarks.map((remark) => remark.kind)).toContain('forceZeroDrift')
  })

  test('the force zero weighs on every point alike, as a shared uncertainty', () => {
    const { reduction } = reduced(wish)
    for (const point of reduction.points) {
      const share = (point.shared.forceZero ?? 0) / (point.friction ?? 1)
      expect(share * point.axialForce).toBeGreaterThan(1e-5)
      expect(point.sharedUncertainty ?? 0).toBeGreaterThanOrEqual(point.shared.forceZero ?? 0)
    }
  })
})

describe('shared uncertainty', () => {
  test('scales of torque and force and the lever, as rectangular half-widths and standard uncertainties', () => {
    const { reduction } = reduced({
      fixture: { ...threeBalls, trackRadiusUncertainty: 0.00015 },
      setup: (setup) => ({
        ...setup,
        rig: { ...setup.rig, torque: { scaleAccuracy: 0.01 }, axialForce: { scaleAccuracy: 0.02 } },
      }),
    })
    for (const { friction, shared } of reduction.points) {
      expect((shared.torqueScale ?? 0) / (friction ?? 1)).toBeCloseTo(0.01 / Math.sqrt(3), 9)
      expect((shared.forceScale ?? 0) / (friction ?? 1)).toBeCloseTo(0.02 / Math.sqrt(3), 9)
      expect((shared.lever ?? 0) / (friction ?? 1)).toBeCloseTo(0.01, 9)
    }
  })
})

describe('other kinds of record', () => {
  test('a ramp is cut in bins of log speed, its inertia is taken off', () => {
    const { reduction, run } = reduced({
      sheet: { speeds: { kind: 'ramp', slowest: 0.01, fastest: 1, duration: 60, law: 'logarithmic', direction: 'up' } },
      rig: { inertia: 5e-5, riseTime: 0 },
      columns: ['time', 'angularVelocity', 'torque', 'axialForce', 'angle'],
      setup: (setup) => ({ ...setup, rig: { ...setup.rig, inertia: 5e-5 } }),
    })
    expect(reduction.segmentation).toBe('ramp')
    expect(reduction.points.length).toBe(20)
    for (const point of reduction.points) {
      const want = run.friction.at(point.slidingSpeed)
      expect(Math.abs((point.friction ?? 0) / want - 1)).toBeLessThan(0.02)
    }
  })

  test('without a step column the plateaus of speed are found', () => {
    const { reduction, friction } = reduced({ columns: ['time', 'angularVelocity', 'torque', 'axialForce'] })
    expect(reduction.segmentation).toBe('plateaus')
    expect(reduction.points.length).toBe(friction.length)
    expect(reduction.remarks.map((r) => r.kind)).toContain('angleFromSpeed')
  })

  test('the speed backwards: friction has the same sign', () => {
    const { reduction, run } = reduced({ sheet: { speeds: { kind: 'list', speeds: [0.02, -0.02, 0.05] } } })
    for (const point of reduction.points) {
      expect(Math.abs((point.friction ?? 0) / run.friction.at(point.slidingSpeed) - 1)).toBeLessThan(0.01)
    }
  })

  test('up and down keep their directions', () => {
    const { reduction } = reduced({
      sheet: { speeds: { kind: 'range', slowest: 1e-3, fastest: 0.1, perDecade: 2, direction: 'upAndDown' } },
    })
    expect(reduction.points.map((point) => point.direction)).toEqual([1, 1, 1, 1, 1, 1, -1, -1, -1, -1])
  })

  test('rows with holes are passed over', () => {
    const rows = 400
    const time = Float64Array.from({ length: rows }, (_, i) => i * 0.1)
    const fill = (value: number) => new Float64Array(rows).fill(value)
    const torque = fill(0.015).map((value, i) => (i % 7 === 0 ? Number.NaN : value + 1e-5 * Math.sin(i)))
    const outcome = reduceRecord(
      channelsInMemory({ time, torque, axialForce: fill(5), angularVelocity: fill(2) }),
      setupFor(),
    )
    expect(outcome.ok && outcome.value.points[0].friction).toBeCloseTo(0.2, 3)
  })

  test.for([
    { lacks: 'torque', columns: { time: 1, axialForce: 1, angularVelocity: 1 }, name: 'torque' },
    { lacks: 'speed', columns: { time: 1, torque: 1, axialForce: 1 }, name: 'speed' },
    { lacks: 'time', columns: { torque: 1, axialForce: 1, angularVelocity: 1 }, name: 'time' },
  ])('a record that lacks $lacks is a problem with a mend', ({ columns, name }) => {
    const outcome = reduceRecord(
      channelsInMemory(Object.fromEntries(Object.keys(columns).map((key) => [key, new Float64Array(50).fill(1)]))),
      setupFor(),
    )
    expect(outcome.ok).toBe(false)
    if (outcome.ok) return
    expect(outcome.problems.map((problem) => problem.place.name)).toEqual([name])
    expect(outcome.problems[0].mend).not.toBe('')
  })
})

function setupFor(): Setup {
  return {
    rig: { name: 'rig', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
    fixture: threeBalls,
    pair: { upper: { name: 'upper' }, lower: { name: 'lower' } },
    run: { axialForce: 5 },
    options: {},
  }
}
