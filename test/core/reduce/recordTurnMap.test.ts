import { describe, expect, test } from 'vitest'
import { recordTurnMap, reduceRecord } from '../../../src/core/reduce/index.ts'
import { type ChannelName, channelsInMemory, type Setup } from '../../../src/core/terms/index.ts'
import { threeBalls } from './virtualRuns.ts'

const lever = threeBalls.trackRadius

/** Ten turns at one speed, friction and force as asked for, exact; a blank of two seconds before and zeroes that are off. */
function record(friction: (angle: number) => number, leave: readonly ChannelName[] = []) {
  const rows = 2000
  const rate = Math.PI / 5
  const every = (value: (row: number) => number): Float64Array =>
    Float64Array.from({ length: rows }, (_, i) => value(i))
  const time = every((i) => i / 20)
  const angle = every((i) => (rate * i) / 20)
  const lifted = (i: number): boolean => i < 200
  const columns = {
    time,
    step: every((i) => (lifted(i) ? 1 : 2)),
    angularVelocity: every(() => rate),
    torque: every((i) => 1e-4 + (lifted(i) ? 0 : friction(angle[i]) * lever * 5)),
    axialForce: every((i) => (lifted(i) ? 0.2 : 5.2)),
    angle,
    gap: every((i) => (lifted(i) ? 2e-3 : 1e-5 + 1e-6 * Math.sin(angle[i]))),
  }
  for (const name of leave) Reflect.deleteProperty(columns, name)
  const channels = channelsInMemory(columns)
  const setup: Setup = {
    rig: { name: 'exact', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
    fixture: threeBalls,
    pair: { upper: { name: 'upper' }, lower: { name: 'lower' } },
    run: { axialForce: 5 },
    options: {},
  }
  const outcome = reduceRecord(channels, setup)
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return { channels, setup, reduction: outcome.value }
}

const wavy = (angle: number): number => 0.2 + 0.03 * Math.cos(angle)

/** Largest distance of a cell from what it should hold; empty cells count for nothing. */
function farthest(map: { columns: number; mean: Float64Array }, want: (angle: number) => number): number {
  const middle = (cell: number): number => (((cell % map.columns) + 0.5) / map.columns) * 2 * Math.PI
  return [...map.mean].reduce(
    (most, value, cell) => (Number.isNaN(value) ? most : Math.max(most, Math.abs(value - want(middle(cell))))),
    0,
  )
}

describe('zeroes and blank are off the cells', () => {
  const whole = record(wavy)

  test('friction, force and gap of a known record', () => {
    const cells = { columns: 20 }
    const friction = recordTurnMap(whole, 'friction', cells)
    expect(friction.turns).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
    expect(farthest(friction, wavy)).toBeLessThan(0.001)
    expect(farthest(recordTurnMap(whole, 'frictionSwing', cells), (at) => wavy(at) / 0.2 - 1)).toBeLessThan(0.005)
    expect(farthest(recordTurnMap(whole, 'axialForce', cells), () => 5)).toBeLessThan(1e-6)
    expect(farthest(recordTurnMap(whole, 'gap', cells), (at) => 1e-5 + 1e-6 * Math.sin(at))).toBeLessThan(5e-8)
  })

  test('steps stand at the turn where they begin', () => {
    expect(recordTurnMap(whole, 'friction').steps).toEqual([{ number: 2, turn: expect.closeTo(1, 9) }])
  })

  test('a record without an angle is turned by its speed', () => {
    const map = recordTurnMap(record(wavy, ['angle']), 'friction', { columns: 20 })
    expect(farthest(map, wavy)).toBeLessThan(0.001)
  })

  test('a gap that is not there is refused', () => {
    expect(() => recordTurnMap(record(wavy, ['gap']), 'gap')).toThrow('this record has no channel gap')
  })
})

test('rows out of contact leave their cells empty', () => {
  const whole = record(() => 0.2)
  const force = whole.channels.read('axialForce', 0, 2000).map((value, i) => (i >= 1000 && i < 1050 ? 1 : value))
  const columns = Object.fromEntries(whole.channels.names.map((name) => [name, whole.channels.read(name, 0, 2000)]))
  const lost = channelsInMemory({ ...columns, axialForce: force })
  const outcome = reduceRecord(lost, whole.setup)
  if (!outcome.ok) throw new Error('the record has all it needs')
  const map = recordTurnMap({ channels: lost, setup: whole.setup, reduction: outcome.value }, 'friction', {
    columns: 20,
  })
  // Fifty of the two hundred rows of the fifth turn: a quarter of its twenty cells.
  expect(map.empty).toBe(5)
})
