import { describe, expect, test } from 'vitest'
import { Envelopes } from '../../../../../src/web/stations/read/strip/envelopes.ts'
import {
  deepestLevel,
  levelFor,
  placesIn,
  type Tile,
  tileSpan,
} from '../../../../../src/web/stations/read/strip/tile.ts'
import { tileFrom } from '../../../../../src/web/stations/read/strip/tileFrom.ts'

const whole = { from: 0, to: 1024 }

describe('levels', () => {
  test('a view gets one to two columns a pixel', () => {
    for (const view of [
      { from: 0, to: 1024 },
      { from: 100, to: 613 },
      { from: 3, to: 4.7 },
    ]) {
      const level = levelFor(view, 1000, { whole, deepest: 30 })
      const columns = (2 ** level * 1024 * (view.to - view.from)) / 1024
      expect(columns).toBeGreaterThanOrEqual(1000)
      expect(columns).toBeLessThan(2048)
    }
  })

  test('tiles lie side by side and cover the view', () => {
    const places = placesIn({ from: 300, to: 700 }, 3, whole)
    expect(places.map((place) => tileSpan(place, whole))).toEqual([
      { from: 256, to: 384 },
      { from: 384, to: 512 },
      { from: 512, to: 640 },
      { from: 640, to: 768 },
    ])
  })

  test('no level is deeper than a few dozen rows a tile', () => {
    expect(deepestLevel(10)).toBe(0)
    expect(1_000_000 / 2 ** deepestLevel(1_000_000)).toBeLessThanOrEqual(64)
  })
})

const tile = (exact: boolean): Tile => ({ at: new Float64Array(0), channels: new Map(), exact })

describe('what is held', () => {
  test('the coarse picture stands in until the fine one has come', async () => {
    const asked: string[] = []
    const come = new Map<string, (tile: Tile) => void>()
    let told = 0
    const envelopes = new Envelopes({
      whole,
      rows: 1_000_000,
      fetchTile: ({ from, to }) => {
        asked.push(`${from}–${to}`)
        return new Promise((resolve) => come.set(`${from}–${to}`, resolve))
      },
    })
    envelopes.tell(() => told++)
    const view = { from: 0, to: 256 }
    expect(envelopes.pieces(view, 1000)).toEqual([])
    expect(asked).toEqual(['0–1024', '0–256', '256–512'])
    const coarse = tile(false)
    come.get('0–1024')?.(coarse)
    await Promise.resolve().then(() => undefined)
    expect(envelopes.pieces(view, 1000)).toEqual([{ tile: coarse, part: { from: 0, to: 512 } }])
    const fine = tile(false)
    come.get('0–256')?.(fine)
    await Promise.resolve().then(() => undefined)
    expect(envelopes.pieces(view, 1000)[0]).toEqual({ tile: fine, part: { from: 0, to: 256 } })
    expect(told).toBe(2)
    expect(asked).toHaveLength(3)
  })

  test('where the rows themselves are here, nothing finer is asked for', async () => {
    let asked = 0
    const envelopes = new Envelopes({
      whole,
      rows: 1_000_000,
      fetchTile: () => {
        asked++
        return Promise.resolve(tile(true))
      },
    })
    envelopes.pieces(whole, 900)
    await new Promise((resolve) => setTimeout(resolve))
    envelopes.pieces({ from: 3, to: 4 }, 900)
    expect(asked).toBe(1)
  })

  test('what could not be had is asked for again, and nothing after the end', async () => {
    let asked = 0
    const envelopes = new Envelopes({
      whole,
      rows: 100,
      fetchTile: () => {
        asked++
        return Promise.reject(new Error('away'))
      },
    })
    envelopes.pieces(whole, 900)
    await new Promise((resolve) => setTimeout(resolve))
    envelopes.pieces(whole, 900)
    expect(asked).toBe(2)
    await new Promise((resolve) => setTimeout(resolve))
    envelopes.close()
    envelopes.pieces(whole, 900)
    expect(asked).toBe(2)
  })
})

test('a tile over the wire: columns get the middle of their stretch, null is a gap, rows win where they are there', () => {
  const envelope = tileFrom({
    from: 10,
    to: 14,
    columns: { torque: { min: [1, null], max: [2, null] } },
    exact: null,
  })
  expect([...envelope.at]).toEqual([11, 13])
  expect([...(envelope.channels.get('torque')?.max ?? [])]).toEqual([2, Number.NaN])
  const rows = tileFrom({ from: 0, to: 1, columns: {}, exact: { time: [0, 0.7], values: { torque: [3, 4] } } })
  expect(rows.exact).toBe(true)
  expect([...rows.at]).toEqual([0, 0.7])
})
