import { describe, expect, test } from 'vitest'
import { breakawayOf } from '../../../../src/core/reduce/questions/index.ts'
import {
  type BreakawayRun,
  type Disturbances,
  familyLaw,
  simulateBreakaway,
  simulateRecord,
  usualColumns,
  type VirtualRig,
} from '../../../../src/core/rig/index.ts'
import type { Breakaway, Setup } from '../../../../src/core/terms/index.ts'
import { threeBalls } from '../virtualRuns.ts'

const setup: Setup = {
  rig: {
    name: 'virtual rig',
    torque: { scaleAccuracy: 0.005 },
    axialForce: { scaleAccuracy: 0.01 },
    angularVelocity: {},
  },
  fixture: threeBalls,
  pair: { upper: { name: 'ball' }, lower: { name: 'wax (invented)' } },
  run: { axialForce: 5 },
  options: {},
}

const plain: BreakawayRun = {
  fixture: threeBalls,
  axialForce: 5,
  temperature: 296.15,
  samplingRate: 50,
  dwells: [1, 3, 10, 30, 100, 1, 10, 100],
  torqueRate: 2e-3,
  mostTorque: 0.05,
  stopAngle: 0.05,
  fastest: 1,
  inertia: 6e-5,
  torsionalStiffness: 25,
  creep: 2e-4,
  friction: { level: 0.22, slope: 0.012, time: 1, kinetic: 0.17, scatter: 0.002 },
  noise: { torque: { white: 8e-6 }, axialForce: { white: 5e-3 }, angle: { white: 2e-6, resolution: 1e-6 } },
}

function started(change: Partial<BreakawayRun> = {}, seed = 3) {
  const { channels, truth } = simulateBreakaway({ ...plain, ...change }, seed)
  const found = breakawayOf(channels, setup)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  return { found: found.value, truth }
}

describe('torque ramps after eight dwells', () => {
  const { found, truth } = started()

  test('every start is seen with its dwell and its ramp rate', () => {
    expect(found.starts.map(({ step }) => step)).toEqual(truth.starts.map(({ step }) => step))
    for (const [i, { dwell, torqueRate, kind }] of found.starts.entries()) {
      expect(kind).toBe('torqueRamp')
      // A row of rest more or less.
      expect(Math.abs(dwell - plain.dwells[i])).toBeLessThan(0.05)
      expect(torqueRate).toBeCloseTo(2e-3, 5)
    }
  })

  test('static friction is that of each start, within its interval but for one in twenty', () => {
    const inside = found.starts.filter(({ staticFriction }, i) => {
      const { staticFriction: made } = truth.starts[i]
      return staticFriction !== null && (staticFriction.low ?? 1) <= made && made <= (staticFriction.high ?? 0)
    })
    expect(inside.length).toBeGreaterThanOrEqual(7)
    for (const [i, { staticFriction }] of found.starts.entries()) {
      expect(Math.abs((staticFriction?.value ?? 0) / truth.starts[i].staticFriction - 1)).toBeLessThan(3e-3)
    }
  })

  test('stiffness is that of the shaft, and what all starts share stays apart', () => {
    for (const { stiffness, shared, staticFriction } of found.starts) {
      expect(Math.abs((stiffness?.value ?? 0) / 25 - 1)).toBeLessThan(0.01)
      expect(shared.torqueScale).toBeCloseTo(((staticFriction?.value ?? 0) * 0.005) / Math.sqrt(3), 9)
    }
  })

  test('static friction ages by 0.012 per e-fold', () => {
    expect(found.ageing?.grows).toBe('yes')
    expect(found.ageing?.slope.low).toBeLessThan(0.012)
    expect(found.ageing?.slope.high).toBeGreaterThan(0.012)
    expect(found.ageing?.scatter).toBeGreaterThan(0)
  })

  test('each peak is static friction, with the shaft at rest until then', () => {
    for (const { peak } of found.starts) expect(peak.cause).toBe('staticFriction')
  })
})

describe('what is no motion', () => {
  test.for<[string, Partial<BreakawayRun>]>([
    ['a stiff shaft', {}],
    ['a soft shaft that twists a lot', { torsionalStiffness: 1 }],
    ['creep that doubles the twist', { creep: 2e-3 }],
    ['a coarse encoder', { noise: { ...plain.noise, angle: { white: 5e-5, resolution: 2e-5 } } }],
  ])('%s: a ramp that ends before breakaway says so and gives a lower bound', ([, change]) => {
    const { found } = started({ ...change, mostTorque: 0.012, dwells: [1, 10, 100] })
    expect(found.starts.map(({ moved }) => moved)).toEqual([false, false, false])
    for (const { held, remarks, staticFriction } of found.starts) {
      // 12 mN·m over 15 mm and 5 N.
      expect(held).toBeCloseTo(0.16, 3)
      expect(staticFriction).toBeNull()
      expect(remarks.map(({ kind }) => kind)).toEqual(['noBreakaway'])
    }
    expect(found.ageing).toBeNull()
    expect(found.ageingMissing).toContain('there are 0')
  })

  test('twist and creep are told apart from each other', () => {
    const { found } = started({ creep: 2e-3, mostTorque: 0.012, dwells: [1] })
    const [{ elastic, creep }] = found.starts
    // 12 mN·m / 25 N·m/rad, and ½·creep·rate·t² over 6 s.
    expect(Math.abs(elastic / 4.8e-4 - 1)).toBeLessThan(0.05)
    expect(Math.abs(creep / 7.2e-5 - 1)).toBeLessThan(0.15)
  })
})

test('static friction that does not age: growth is not claimed', () => {
  const { found } = started({ friction: { ...plain.friction, slope: 0 } })
  expect(found.ageing?.grows).toBe('cannotTell')
})

describe('starts at an imposed speed', () => {
  const start = (
    rig: Partial<VirtualRig>,
    disturbances: Disturbances,
    known: Partial<Setup['rig']> = {},
  ): Breakaway => {
    const { channels } = simulateRecord(
      {
        fixture: threeBalls,
        rig: { noise: { torque: { white: 6e-6 }, axialForce: { white: 5e-3 } }, riseTime: 0, ...rig },
        sheet: {
          speeds: { kind: 'list', speeds: [1e-3] },
          dwell: { kind: 'time', seconds: 20 },
          samplingRate: 100,
          axialForce: 5,
          temperature: 298.15,
          gap: 0,
          blankBefore: false,
          blankAfter: false,
          lift: 1e-3,
        },
        friction: familyLaw('plateau', { h: 0.2 }),
        disturbances,
        columns: usualColumns,
      },
      5,
    )
    const found = breakawayOf(channels, { ...setup, rig: { ...setup.rig, ...known } })
    if (!found.ok) throw new Error(JSON.stringify(found.problems))
    return found.value
  }

  test('a peak that the contact held up to is static friction', () => {
    const found = start(
      { torsionalStiffness: 3 },
      { runningIn: { excess: 0.3, distance: 20e-6 } },
      { torsionalStiffness: 3 },
    )
    const [{ peak, kinetic, staticFriction, stiffness }] = found.starts
    expect(peak.cause).toBe('staticFriction')
    expect(kinetic).toBeCloseTo(0.2, 3)
    // The record's rows come every 10 µm of motor travel, so the peak of 0.26 is cut a little.
    expect(staticFriction?.value).toBeGreaterThan(0.245)
    expect(staticFriction?.value).toBeLessThan(0.2605)
    expect(stiffness?.value).toBeCloseTo(3, 1)
  })

  test('a torque that only rises to its level is wind-up', () => {
    const found = start({ torsionalStiffness: 3 }, {}, { torsionalStiffness: 3 })
    expect(found.starts[0].peak.cause).toBe('windUp')
    expect(found.starts[0].staticFriction).toBeNull()
  })

  test('an overshoot while the shaft speeds up is inertia where the setup knows it, else it cannot be told', () => {
    const rig = { inertia: 0.05, riseTime: 0.05 }
    expect(start(rig, {}, { inertia: 0.05 }).starts[0].peak.cause).toBe('inertia')
    const unknown = start(rig, {})
    expect(unknown.starts[0].peak.cause).toBe('cannotTell')
    expect(unknown.remarks.map(({ kind }) => kind)).toEqual(['peakNotStatic'])
  })
})

test('a record without a start says so', () => {
  const { channels } = simulateBreakaway({ ...plain, dwells: [] }, 1)
  const found = breakawayOf(channels, setup)
  expect(found.ok ? [] : found.problems.map(({ kind }) => kind)).toEqual(['noStart'])
})
