import { describe, expect, test } from 'vitest'
import { partialTurnShare } from '../../../../src/core/reduce/index.ts'
import type { Reduction } from '../../../../src/core/terms/index.ts'
import { reduced } from '../virtualRuns.ts'

// Worst bias of a partial turn as a share of the ripple's amplitude: |sin πN|/(πN), computed outside this program.
test.for([
  [0.05, 0.996],
  [0.1, 0.984],
  [0.25, 0.9],
  [0.5, 0.637],
  [0.75, 0.3],
  [0.9, 0.109],
  [1, 0],
  [1.25, 0.18],
  [2.5, 0.127],
])('%d of a turn leaves %d of the ripple', ([turns, share]) => {
  expect(Math.abs(partialTurnShare(turns) - share)).toBeLessThan(6e-4)
})

const limit = (reduction: Reduction, name: string) => reduction.window.limits.find((one) => one.name === name)

describe('from which to which speed the curve may be believed', () => {
  test('a clean run: all of it, each limit told', () => {
    const { reduction } = reduced()
    const speeds = reduction.points.map((point) => point.slidingSpeed)
    expect(reduction.window.low).toBe(Math.min(...speeds))
    expect(reduction.window.high).toBe(Math.max(...speeds))
    expect(reduction.window.sentence).toContain('the end of the data')
    expect(reduction.window.limits.map((one) => one.name)).toEqual([
      'torqueFloor',
      'forceZero',
      'partialTurn',
      'windUp',
      'contact',
      'torqueCeiling',
      'inertia',
      'drag',
    ])
    for (const one of reduction.window.limits) expect(one.slidingSpeed).toBeNull()
  })

  test('a torque floor in the middle cuts at the widest run', () => {
    const { reduction } = reduced({
      setup: (setup) => ({ ...setup, rig: { ...setup.rig, torque: { floor: 0.004, scaleAccuracy: 0 } } }),
    })
    const low = reduction.points.filter((point) => point.torque < 0.004).map((point) => point.slidingSpeed)
    expect(reduction.window.high).toBeLessThan(Math.min(...low))
    expect(reduction.window.sentence).toContain('the torque floor')
    expect(limit(reduction, 'torqueFloor')?.seen).toBeGreaterThan(1)
  })

  test('a ripple and a turn that was not completed cut the slow end, with the bound', () => {
    const { reduction } = reduced({
      disturbances: { frictionRipple: [{ order: 1, amplitude: 0.12, phase: 0.4 }] },
    })
    const cut = reduction.points.filter((point) => partialTurnShare(point.turns) * 0.12 > 0.05 && point.turns < 1)
    expect(cut.length).toBeGreaterThan(0)
    expect(reduction.window.low).toBeGreaterThan(Math.max(...cut.map((point) => point.slidingSpeed)))
    const [first] = reduction.window.partialTurnBias
    expect(first.bound).toBeCloseTo(0.12 * partialTurnShare(first.turns), 2)
    expect(reduction.window.plateau.verdict).toBe('doubtful')
  })

  test('one lost contact is a hole, not an end', () => {
    const { reduction } = reduced({ disturbances: { lostContact: [{ step: 4, from: 3, to: 9, share: 0.1 }] } })
    expect(reduction.window.low).toBe(reduction.points[0].slidingSpeed)
    expect(reduction.window.sentence).toContain('but not at')
  })

  test('wind-up of a soft shaft cuts the slow end', () => {
    const { reduction } = reduced({
      setup: (setup) => ({ ...setup, rig: { ...setup.rig, torsionalStiffness: 0.01 } }),
    })
    expect(limit(reduction, 'windUp')?.slidingSpeed).toBe(reduction.window.low)
    expect(reduction.window.low).toBeGreaterThan(reduction.points[0].slidingSpeed)
  })

  test('drag that is more than half of the torque cuts the fast end', () => {
    const { reduction } = reduced({
      rig: { residualTorque: { level: 0, perSpeed: 1e-3 } },
      sheet: { blankBefore: true },
    })
    expect(limit(reduction, 'drag')).toMatchObject({ end: 'high' })
    expect(reduction.window.high).toBeLessThan(reduction.points[reduction.points.length - 1].slidingSpeed)
  })
})

describe('is the low-speed plateau real?', () => {
  const slow = (slowest: number, fastest: number) =>
    ({ speeds: { kind: 'range', slowest, fastest, perDecade: 6, direction: 'up' } }) as const
  test.for([
    { name: 'deep in the plateau', sheet: slow(1e-4, 0.1), verdict: 'real' },
    { name: 'on the falling branch', sheet: slow(4e-3, 0.1), verdict: 'notReached' },
    { name: 'two points', sheet: { speeds: { kind: 'list', speeds: [0.01, 0.02] } }, verdict: 'cannotTell' },
  ] as const)('$name: $verdict', ({ sheet, verdict }) => {
    expect(reduced({ sheet }).reduction.window.plateau.verdict).toBe(verdict)
  })

  test('no step of a whole turn: cannot tell, for a tilt could hide in it', () => {
    const { plateau } = reduced({ sheet: slow(1e-5, 1e-3) }).reduction.window
    expect(plateau.verdict).toBe('cannotTell')
    expect(plateau.sentence).toContain('whole turn')
  })
})
