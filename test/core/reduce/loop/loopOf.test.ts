import { describe, expect, test } from 'vitest'
import { reduceRecord } from '../../../../src/core/reduce/index.ts'
import { loopOf, sweepsRunIn } from '../../../../src/core/reduce/questions/index.ts'
import {
  type Disturbances,
  familyLaw,
  simulateRecord,
  usualColumns,
  type VirtualRig,
  type VirtualRun,
} from '../../../../src/core/rig/index.ts'
import type { Loop, LoopCause, Setup } from '../../../../src/core/terms/index.ts'
import { realRecord } from '../../../figure/realRecords.ts'
import { threeBalls } from '../virtualRuns.ts'

const setup: Setup = {
  rig: {
    name: 'virtual rig',
    torque: { scaleAccuracy: 0.005 },
    axialForce: { scaleAccuracy: 0.01 },
    angularVelocity: {},
  },
  fixture: threeBalls,
  pair: { upper: { name: 'ball' }, lower: { name: 'silicone (invented)' } },
  liquid: { name: 'oat drink (invented)' },
  run: { axialForce: 3 },
  options: {},
}

interface Wish {
  readonly disturbances?: Disturbances
  readonly rig?: Partial<VirtualRig>
  readonly blankAfter?: boolean
  readonly blankBefore?: boolean
}

function swept({ disturbances = {}, rig = {}, blankBefore = true, blankAfter = false }: Wish, seed = 3) {
  const run: VirtualRun = {
    fixture: threeBalls,
    rig: {
      noise: {
        torque: { white: 3e-6, correlated: 3e-6, correlation: 0.6 },
        axialForce: { white: 3e-3 },
        temperature: { white: 0.02 },
        gap: { white: 1e-7 },
      },
      riseTime: 0.2,
      ...rig,
    },
    sheet: {
      speeds: { kind: 'range', slowest: 1e-3, fastest: 0.3, perDecade: 5, direction: 'upAndDown' },
      dwell: { kind: 'time', seconds: 20 },
      samplingRate: 10,
      axialForce: 3,
      temperature: 298.15,
      gap: 0,
      blankBefore,
      blankAfter,
      lift: 1e-3,
    },
    friction: familyLaw('stribeck', { k: 0.1, n: 0.35, h: 0.2, x0: 0.01, m: 1.4 }),
    disturbances,
    columns: usualColumns,
  }
  const { channels } = simulateRecord(run, seed)
  const reduction = reduceRecord(channels, setup)
  if (!reduction.ok) throw new Error(JSON.stringify(reduction.problems))
  return { channels, reduction: reduction.value }
}

function looped(wish: Wish): Loop {
  const loop = loopOf({ ...swept(wish), setup })
  if (!loop.ok) throw new Error(JSON.stringify(loop.problems))
  return loop.value
}

const verdictOf = ({ causes }: Loop, wanted: LoopCause) => causes.find(({ cause }) => cause === wanted)?.verdict

test('up-and-down: nothing is the matter with it, so there is no loop (its truth file)', async () => {
  const { channels, setup: own, reduction } = await realRecord('up-and-down')
  const loop = loopOf({ channels, setup: own, reduction })
  expect(loop.ok && loop.value.verdict).toBe('none')
  expect(loop.ok && loop.value.pairs.length).toBe(8)
  expect(loop.ok && loop.value.causes).toEqual([])
  expect(loop.ok && loop.value.remarks).toEqual([])
})

test('oat-drink-warm rises only, and says what is missing', async () => {
  const { channels, setup: own, reduction } = await realRecord('oat-drink-warm')
  const loop = loopOf({ channels, setup: own, reduction })
  expect(loop.ok ? [] : loop.problems.map(({ kind }) => kind)).toEqual(['oneWayOnly'])
})

test('without a disturbance there is no loop, and the margins hold every speed', () => {
  const loop = looped({})
  expect(loop.verdict).toBe('none')
  for (const { together, frictionUp } of loop.pairs) {
    expect(together.low).toBeLessThan(0)
    expect(together.high - together.low).toBeLessThan(0.1 * frictionUp)
  }
})

describe('why they differ', () => {
  test('running-in of 30 % over 2 m leads the list, with its length', () => {
    const loop = looped({ disturbances: { runningIn: { excess: 0.3, distance: 2 } } })
    expect(loop.verdict).toBe('real')
    expect(loop.causes[0].cause).toBe('runningIn')
    expect(loop.causes[0].verdict).toBe('likely')
    expect(loop.causes[0].for.join()).toMatch(/fades over (1\.9|2|2\.1) m/)
    expect(loop.remarks.map(({ kind }) => kind)).toEqual(['directionsDiffer'])
    expect(verdictOf(loop, 'heating')).toBe('unlikely')
  })

  test('a liquid that thins without warming is thixotropy, not running-in', () => {
    const loop = looped({ disturbances: { liquidChange: { share: -0.5, timeConstant: 700 } } })
    expect(['real', 'small']).toContain(loop.verdict)
    expect(loop.causes[0].cause).toBe('thixotropy')
    expect(verdictOf(loop, 'runningIn')).toBe('unlikely')
  })

  test('the same with a temperature that rises with it is heating', () => {
    const loop = looped({
      disturbances: {
        liquidChange: { share: -0.5, timeConstant: 700 },
        thermalDrift: { change: 8, timeConstant: 700, growth: 0 },
      },
    })
    expect(loop.causes[0].cause).toBe('heating')
    expect(verdictOf(loop, 'thixotropy')).not.toBe('likely')
  })

  test('a zero that drifts is taken off where it was read before and after, else it stays possible', () => {
    const rig = { forceZero: { level: 0, perSecond: 1e-4 } }
    expect(looped({ rig, blankAfter: true }).verdict).toBe('none')
    const open = looped({ rig, blankBefore: false })
    expect(open.causes.length).toBeGreaterThan(0)
    expect(verdictOf(open, 'forceDrift')).toBe('possible')
  })

  test('every cause carries the test that would tell', () => {
    const { causes } = looped({ disturbances: { runningIn: { excess: 0.3, distance: 2 } } })
    expect(causes.length).toBe(9)
    for (const cause of causes) expect(cause.test.length).toBeGreaterThan(20)
  })
})

describe('run-in from sweep to sweep', () => {
  const told = (wish: Wish, margin: number) => {
    const found = sweepsRunIn(
      [
        { name: 'first', ...swept(wish, 3) },
        { name: 'second', ...swept({}, 4) },
      ],
      margin,
    )
    if (!found.ok) throw new Error(JSON.stringify(found.problems))
    return found.value
  }

  test('two sweeps of one law are run in within 5 %', () => {
    const { verdict, changes } = told({}, 0.05)
    expect(verdict).toBe('runIn')
    expect(changes.map(({ speeds }) => speeds)).toEqual([13, 13])
  })

  test('within a margin finer than their noise they cannot tell', () => {
    expect(told({}, 1e-5).verdict).toBe('cannotTell')
  })

  test('a first sweep that still ran in is not', () => {
    expect(told({ disturbances: { runningIn: { excess: 0.5, distance: 20 } } }, 0.05).verdict).toBe('notRunIn')
  })

  test('one sweep alone has nothing to be compared with', () => {
    const { channels, reduction } = swept({})
    const found = sweepsRunIn([{ name: 'only', channels, reduction }], 0.05)
    expect(found.ok ? [] : found.problems.map(({ kind }) => kind)).toEqual(['oneSweepOnly'])
  })
})
