import { expect, test } from 'vitest'
import { PixelColumns, paintTrace } from '../../../../../src/web/stations/read/strip/paintTrace.ts'
import type { Tile } from '../../../../../src/web/stations/read/strip/tile.ts'

const whole = { from: 0, to: 10 }

/** Bars that one channel is painted as, ten pixels across, ten pixels for each unit downwards. */
function barsOf(at: readonly number[], min: readonly number[], max: readonly number[] = min): number[][] {
  const channel = { min: Float64Array.from(min), max: Float64Array.from(max) }
  const tile: Tile = { at: Float64Array.from(at), channels: new Map([['torque', channel]]), exact: true }
  const bars: number[][] = []
  paintTrace(
    { fillRect: (...bar) => bars.push(bar) },
    { pieces: [{ tile, part: whole }], name: 'torque' },
    {
      place: { view: whole, left: 0, right: 10, y: (value) => 100 - 10 * value, thick: 1 },
      columns: new PixelColumns(),
    },
  )
  return bars
}

const middles = Array.from({ length: 10 }, (_, column) => column + 0.5)

test('no peak is lost: each bar runs from the smallest to the largest', () => {
  const bars = barsOf(
    middles,
    middles.map(() => 1),
    middles.map((_, column) => (column === 4 ? 9 : 2)),
  )
  expect(bars[4]).toEqual([4, 9.5, 1, 81])
  expect(bars[2]).toEqual([2, 79.5, 1, 11])
})

test('neighbours touch, also over a jump', () => {
  const bars = barsOf(
    middles,
    middles.map((_, column) => (column < 5 ? 1 : 8)),
  )
  const [, top, , height] = bars[5]
  expect(top).toBe(19.5)
  expect(top + height).toBeGreaterThanOrEqual(90)
})

test('rows far apart are joined, an empty stretch is not', () => {
  expect(barsOf([0.5, 4.5, 8.5], [1, 5, 1]).map(([x]) => x)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8])
  const hole = barsOf(
    middles,
    middles.map((_, column) => (column > 0 && column < 9 ? Number.NaN : 1)),
  )
  expect(hole.map(([x]) => x)).toEqual([0, 9])
})
