import { describe, expect, test } from 'vitest'
import { kindsOf, reduced } from './virtualRuns.ts'

describe('what went wrong is said on the right step, with its number', () => {
  test('a clean run has nothing but turns that were not completed', () => {
    const { reduction } = reduced()
    for (const kinds of kindsOf(reduction)) expect(kinds.filter((kind) => kind !== 'underOneTurn')).toEqual([])
  })

  test('lost contact', () => {
    const { reduction } = reduced({ disturbances: { lostContact: [{ step: 4, from: 3, to: 9, share: 0.1 }] } })
    expect(kindsOf(reduction).flatMap((kinds, i) => (kinds.includes('contactLost') ? [i] : []))).toEqual([3])
    expect(reduction.points[3].trusted).toBe(false)
    expect(reduction.points[3].remarks.find((r) => r.kind === 'contactLost')?.seen).toBeCloseTo(0.5, 1)
  })

  test('torque at the ceiling of the rig, and of a clipped signal where none was given', () => {
    const wish = { rig: { torqueCeiling: 0.0145 } } as const
    for (const ceiling of [0.0145, undefined]) {
      const { reduction } = reduced({
        ...wish,
        setup: (setup) => ({ ...setup, rig: { ...setup.rig, torque: { ceiling, scaleAccuracy: 0 } } }),
      })
      const clipped = reduction.points.filter((point) => point.remarks.some((r) => r.kind === 'torqueAtCeiling'))
      expect(clipped.map((point) => point.step)).toEqual([1, 2])
      for (const point of clipped) expect(point.trusted).toBe(false)
      expect(reduction.window.sentence).toContain('torque ceiling')
    }
  })

  test('stick–slip with its frequency, and not where it is locked to the turn', () => {
    const sticking = reduced({
      sheet: { samplingRate: 50 },
      disturbances: { stickSlip: { kind: 'sawTooth', below: 0.004, frequency: 1.7, share: 0.2 } },
    }).reduction
    kindsOf(sticking).forEach((kinds, i) => {
      expect(kinds.includes('stickSlip')).toBe(sticking.points[i].slidingSpeed < 0.004)
    })
    expect(sticking.points[0].remarks.find((r) => r.kind === 'stickSlip')?.sentence).toContain('1.7 Hz')
    const locked = reduced({
      sheet: { samplingRate: 50 },
      disturbances: { frictionRipple: [{ order: 5, amplitude: 0.15, phase: 0 }] },
    }).reduction
    expect(kindsOf(locked).flat()).not.toContain('stickSlip')
  })

  test('tilt: ripple of force and friction with their amplitudes', () => {
    const { reduction } = reduced({
      disturbances: {
        frictionRipple: [{ order: 1, amplitude: 0.15, phase: 0.4 }],
        forceRipple: [{ order: 1, amplitude: 0.08, phase: 0.4 }],
      },
    })
    for (const point of reduction.points.filter(({ turns }) => turns >= 1.5)) {
      expect(point.remarks.find((r) => r.kind === 'frictionRipple')?.seen).toBeCloseTo(0.15, 2)
      expect(point.remarks.find((r) => r.kind === 'forceRipple')?.seen).toBeCloseTo(0.08, 2)
    }
    expect(reduction.ripple[0].friction).toBeCloseTo(0.15, 2)
  })

  test('a gap that creeps, in m over the step', () => {
    const { reduction } = reduced({
      sheet: { speeds: { kind: 'list', speeds: [0.05, 0.1] }, dwell: { kind: 'time', seconds: 60 } },
      disturbances: { thermalDrift: { change: 20, timeConstant: 100, growth: 2e-6 } },
    })
    const remark = reduction.points[0].remarks.find((r) => r.kind === 'gapCreep')
    expect(remark?.unit).toBe('m')
    expect(Math.abs(remark?.seen ?? 0)).toBeGreaterThan(3e-6)
  })

  test('force and temperature away from what was asked', () => {
    const { reduction } = reduced({
      setup: (setup) => ({ ...setup, run: { ...setup.run, axialForce: 4.5, temperature: 303.15 } }),
    })
    for (const kinds of kindsOf(reduction))
      expect(kinds).toEqual(expect.arrayContaining(['forceOffTarget', 'temperatureOff']))
  })

  test('friction under the floor of the rig', () => {
    const { reduction } = reduced({
      setup: (setup) => ({ ...setup, rig: { ...setup.rig, torque: { floor: 0.005, scaleAccuracy: 0 } } }),
    })
    reduction.points.forEach((point) => {
      expect(point.remarks.some((r) => r.kind === 'belowTorqueFloor')).toBe(point.torque < 0.005)
    })
  })

  test('a load far over what was applied: nothing touches, no friction, and it is said', () => {
    const { reduction } = reduced({
      setup: (setup) => ({ ...setup, run: { ...setup.run, axialForce: 50 } }),
    })
    for (const point of reduction.points) expect(point.friction).toBeNull()
    expect(reduction.window.low).toBeNull()
    const { reduction: none } = reduced({
      setup: (setup) => ({ ...setup, run: { ...setup.run, axialForce: 500 } }),
    })
    expect(none.points).toEqual([])
    expect(none.remarks[0]).toMatchObject({ kind: 'contactLost', limit: 500 })
  })

  test('contact lost for the whole of one step', () => {
    const { reduction } = reduced({ disturbances: { lostContact: [{ step: 4, from: 0, to: 99, share: 0.2 }] } })
    expect(reduction.points[3]).toMatchObject({ friction: null, trusted: false })
    expect(kindsOf(reduction)[3]).toEqual(expect.arrayContaining(['contactLost', 'tooFewSamples']))
  })
})
