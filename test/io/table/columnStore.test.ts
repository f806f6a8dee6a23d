import { readdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ColumnStore, pieceRows } from '../../../src/io/table/columnStore.ts'
import { longTable, recordOf } from './tableText.ts'

const rows = 2 * pieceRows + 1234
const value = (column: number, row: number): number => column * 1e6 + row + 0.25

function filled(spillAbove: number): ColumnStore {
  const store = new ColumnStore({
    columns: 2,
    spillAbove,
    finish: (piece, firstRow, count) => {
      // As units do: every number once, in place, knowing its row.
      for (let row = 0; row < count; row++) piece[1][row] += firstRow + row
    },
  })
  for (let row = 0; row < rows; row++) {
    store.current[0][store.filled] = value(0, row)
    store.current[1][store.filled] = value(1, row) - row
    store.filled++
    if (store.filled === pieceRows) store.turn()
  }
  store.end()
  return store
}

const kept: [string, number, boolean][] = [
  ['in memory', rows, false],
  ['in a temporary file from the first row', 0, true],
  ['in a temporary file from the second piece on', pieceRows, true],
]

describe.each(kept)('columns %s', (_, spillAbove, spilled) => {
  const store = filled(spillAbove)

  test('holds what was put in', () => {
    expect(store.rows).toBe(rows)
    expect(store.spilled).toBe(spilled)
    for (const column of [0, 1]) {
      const all = store.read(column, 0, rows)
      expect(all.every((number, row) => number === value(column, row))).toBe(true)
    }
  })

  test('gives any range', () => {
    const near = fc.oneof(
      fc.nat(rows),
      fc.constantFrom(0, pieceRows - 1, pieceRows, pieceRows + 1, 2 * pieceRows, rows),
    )
    fc.assert(
      fc.property(near, near, fc.nat(1), (a, b, column) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)]
        const range = store.read(column, from, to)
        expect(range.length).toBe(to - from)
        const out = new Float64Array(to - from)
        store.readInto(column, from, out)
        expect(out).toEqual(range)
        for (const row of [from, to - 1, (from + to) >> 1]) {
          if (to > from) expect(range[row - from]).toBe(value(column, row))
        }
      }),
      { numRuns: 200 },
    )
  })

  test('refuses a range that it has not', () => {
    expect(() => store.read(0, 0, rows + 1)).toThrow(RangeError)
    expect(() => store.read(0, 5, 4)).toThrow(RangeError)
    expect(() => store.read(0, Number.NaN, 4)).toThrow(RangeError)
    expect(() => store.readInto(0, rows - 1, new Float64Array(2))).toThrow(RangeError)
  })
})

test('the temporary file has no name', () => {
  const before = readdirSync(tmpdir()).filter((name) => name.startsWith('kufe-'))
  const store = filled(0)
  const during = readdirSync(tmpdir()).filter((name) => /^kufe-[0-9a-f]{24}$/.test(name) && !before.includes(name))
  expect(during).toEqual([])
  store.close()
  store.close()
  expect(() => store.read(0, 0, 10)).toThrow()
})

test('a record reads the same from memory and from the file', async () => {
  const text = longTable(pieceRows + 500, (row) => `${1 + Math.floor(row / 1000)},${row % 1000},${(row % 17) / 1000}`)
  const [inMemory, spilled] = [await recordOf(text), await recordOf(text, { spillAbove: 10 })]
  for (const name of ['time', 'step', 'torque'] as const) {
    const column = inMemory.channels.read(name, 0, inMemory.rows)
    expect(spilled.channels.read(name, 0, spilled.rows)).toEqual(column)
    for (const { channels } of [inMemory, spilled]) {
      const out = new Float64Array(700)
      channels.readInto?.(name, pieceRows - 300, out)
      expect(out).toEqual(column.slice(pieceRows - 300, pieceRows + 400))
    }
  }
  // Sixty-six clocks that begin again, over the end of a piece.
  const time = spilled.channels.read('time', 0, spilled.rows)
  expect(time.every((second, row) => second === row)).toBe(true)
  spilled.close()
})
