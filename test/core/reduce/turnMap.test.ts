import fc from 'fast-check'
import { expect, test } from 'vitest'
import { turnMap } from '../../../src/core/reduce/index.ts'

const full = 2 * Math.PI
const turns = (...values: readonly number[]): Float64Array => Float64Array.from(values, (value) => value * full)

test('by hand: two turns in four cells each', () => {
  const map = turnMap(turns(0, 0.1, 0.3, 0.6, 1.05, 1.99), Float64Array.of(1, 3, 5, 7, 9, 11), { columns: 4 })
  expect([map.columns, map.rows, map.turns]).toEqual([4, 2, [0, 1, 2]])
  expect([...map.mean]).toEqual([2, 5, 7, Number.NaN, 9, Number.NaN, Number.NaN, 11])
  expect(map.empty).toBe(3)
  expect(map.range).toEqual([2, 11])
})

test('a record that begins late or runs backwards keeps the place in the turn', () => {
  const late = turnMap(turns(41.3, 42.3), Float64Array.of(1, 2), { columns: 4 })
  expect([late.turns[0], late.rows, [...late.mean].indexOf(1), [...late.mean].indexOf(2)]).toEqual([41, 2, 1, 5])
  const back = turnMap(turns(-0.7, -1.7), Float64Array.of(1, 2), { columns: 4 })
  expect([back.turns[0], [...back.mean].indexOf(2), [...back.mean].indexOf(1)]).toEqual([-2, 1, 5])
})

test('more turns than rows share rows, whole turns each', () => {
  const angle = Float64Array.from({ length: 1001 }, (_, i) => (i / 4) * full)
  const map = turnMap(angle, angle, { columns: 4, rows: 100 })
  expect([map.turns[1] - map.turns[0], map.rows, map.empty]).toEqual([3, 84, 0])
})

test('what repeats every turn stands upright: each column has its own value in every row', () => {
  const angle = Float64Array.from({ length: 36_000 }, (_, i) => i * 0.0123)
  const map = turnMap(
    angle,
    angle.map((at) => 0.2 + 0.05 * Math.cos(at)),
    { columns: 36 },
  )
  for (let cell = 0; cell < 36 * (map.rows - 1); cell++) {
    const middle = ((cell % 36) + 0.5) * (full / 36)
    expect(Math.abs(map.mean[cell] - 0.2 - 0.05 * Math.cos(middle))).toBeLessThan(0.005)
  }
})

test('every value is counted once, whatever the angles', () => {
  const rows = fc.array(
    fc.tuple(fc.double({ min: -5e3, max: 5e3, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true })),
  )
  fc.assert(
    fc.property(rows, fc.integer({ min: 1, max: 360 }), fc.integer({ min: 1, max: 200 }), (given, columns, most) => {
      const angle = Float64Array.from(given, ([at]) => at)
      const value = Float64Array.from(given, ([, one]) => one)
      const map = turnMap(angle, value, { columns, rows: most })
      expect(map.rows).toBeLessThanOrEqual(most)
      expect(map.mean).toHaveLength(map.rows * columns)
      const filled = new Set(
        given.map(([at]) => {
          const turn = Math.floor(at / full)
          const column = Math.min(columns - 1, Math.floor((at / full - turn) * columns))
          return map.turns.findLastIndex((from) => from <= turn) * columns + column
        }),
      )
      expect(map.mean.length - map.empty).toBe(filled.size)
      for (const cell of filled) expect(map.mean[cell]).not.toBeNaN()
    }),
  )
})

test('rows without a value are left out; nothing at all gives no row and no range', () => {
  const map = turnMap(turns(0, 5), Float64Array.of(1, Number.NaN))
  expect([map.rows, map.range]).toEqual([1, [1, 1]])
  const none = turnMap(turns(0, Number.NaN), Float64Array.of(Number.NaN, 1))
  expect([none.rows, none.mean.length, none.empty, none.range]).toEqual([0, 0, 0, null])
})

test('refuses bins that no picture shows and columns of different length', () => {
  for (const columns of [0, 1441, 1.5, Number.NaN]) {
    expect(() => turnMap(turns(0), turns(0), { columns })).toThrow(RangeError)
  }
  expect(() => turnMap(turns(0), turns(0), { rows: 1001 })).toThrow(
    'rows must be a whole number from 1 to 1000, got 1001',
  )
  expect(() => turnMap(turns(0, 1), turns(0))).toThrow('angle has 2 rows, value has 1')
})
