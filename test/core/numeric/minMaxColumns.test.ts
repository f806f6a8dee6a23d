import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { columnEdges, minMaxColumns } from '../../../src/core/numeric/index.ts'

const { NaN: none } = Number

test.for([
  { name: 'two rows a column', values: [3, 1, 4, 1, 5, 9], columns: 3, min: [1, 1, 5], max: [3, 4, 9] },
  { name: 'one column', values: [3, 1, 4], columns: 1, min: [1], max: [4] },
  { name: 'empty cells never win', values: [none, 2, none, none], columns: 2, min: [2, none], max: [2, none] },
  { name: 'more columns than rows', values: [7], columns: 2, min: [none, 7], max: [none, 7] },
  { name: 'no rows', values: [], columns: 2, min: [none, none], max: [none, none] },
])('by hand: $name', ({ values, columns, min, max }) => {
  const got = minMaxColumns(Float64Array.from(values), columns)
  expect([...got.min]).toEqual(min)
  expect([...got.max]).toEqual(max)
})

const rows = fc.array(fc.oneof(fc.double({ noNaN: true }), fc.constant(none)), { maxLength: 200 })
const count = fc.integer({ min: 1, max: 60 })

describe('any rows', () => {
  test('no peak is lost and nothing is made up', () => {
    fc.assert(
      fc.property(rows, count, (values, columns) => {
        const { min, max } = minMaxColumns(Float64Array.from(values), columns)
        const seen = values.filter((value) => !Number.isNaN(value))
        const drawn = [...min, ...max].filter((value) => !Number.isNaN(value))
        expect(drawn.every((value) => seen.includes(value))).toBe(true)
        if (seen.length > 0)
          expect([Math.min(...drawn), Math.max(...drawn)]).toEqual([Math.min(...seen), Math.max(...seen)])
      }),
    )
  })

  test('by way of a pyramid gives the same', () => {
    fc.assert(
      fc.property(rows, count, fc.integer({ min: 1, max: 8 }), (values, columns, factor) => {
        const full = Float64Array.from([
          ...values,
          ...Array(columns * factor - (values.length % (columns * factor))).fill(none),
        ])
        expect(minMaxColumns(minMaxColumns(full, full.length / factor), columns)).toEqual(minMaxColumns(full, columns))
      }),
    )
  })

  test('columns of time hold the rows of their stretch of time, each row once', () => {
    const steps = fc.array(fc.constantFrom(0, 0.1, 1, 25), { minLength: 1, maxLength: 100 })
    fc.assert(
      fc.property(steps, count, (gaps, columns) => {
        let now = 0
        const time = Float64Array.from(gaps, (gap) => {
          now += gap
          return now
        })
        const edges = columnEdges(time, columns)
        const width = (time[time.length - 1] - time[0]) / columns
        expect([edges[0], edges[columns]]).toEqual([0, time.length])
        for (let column = 0; column < columns; column++) {
          for (let row = edges[column]; row < edges[column + 1]; row++) {
            expect(time[row] - time[0]).toBeGreaterThanOrEqual(column * width - 1e-9)
            if (column < columns - 1) expect(time[row] - time[0]).toBeLessThan((column + 1) * width + 1e-9)
          }
        }
      }),
    )
  })
})

test('refuses what is no number of columns, and halves of different length', () => {
  for (const columns of [0, -1, 1.5, none])
    expect(() => minMaxColumns(new Float64Array(3), columns)).toThrow(RangeError)
  expect(() => columnEdges(new Float64Array(3), 0)).toThrow('columns must be a whole number of one or more, got 0')
  expect(() => minMaxColumns({ min: new Float64Array(2), max: new Float64Array(3) }, 1)).toThrow('min has 2 values')
})
