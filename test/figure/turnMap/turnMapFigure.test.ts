import { inflateSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { turnMap } from '../../../src/core/reduce/index.ts'
import { type PaletteName, type TurnMapFigureData, turnMapFigure } from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'

const full = 2 * Math.PI

/** Twelve turns of an invented tilt, with a stretch left out. */
function inventedMap(columns: number): TurnMapFigureData['map'] {
  const angle = Float64Array.from({ length: 12 * 360 }, (_, i) => ((i + 0.5) / 360) * full)
  const value = angle.map((at, i) =>
    i > 1500 && i < 1700 ? Number.NaN : 0.2 + 0.03 * Math.cos(at) + 0.001 * (at / full),
  )
  return turnMap(angle, value, { columns })
}

const data: TurnMapFigureData = {
  title: 'Lacquer on beech, friction over the turn (invented)',
  caption: 'three steel balls 6.35 mm on a track of 15 mm, 5 N',
  map: inventedMap(24),
  quantity: 'friction',
  steps: [
    { number: 1, turn: 0 },
    { number: 2, turn: 0.4 },
    { number: 3, turn: 4 },
    { number: 4, turn: 9.5 },
  ],
  note: 'Invented data: no lab measured them.',
}

const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

/** Palette indices of the picture's cells, row after row. */
function cellsOf(svg: string, columns: number): readonly (readonly number[])[] {
  const bytes = Buffer.from(svg.match(/base64,([^"]*)"/)?.[1] ?? '', 'base64')
  const at = bytes.indexOf('IDAT')
  const rows = inflateSync(bytes.subarray(at + 4, at + 4 + bytes.readUInt32BE(at - 4)))
  return Array.from({ length: rows.length / (columns + 1) }, (_, row) => [
    ...rows.subarray(row * (columns + 1) + 1, (row + 1) * (columns + 1)),
  ])
}

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(turnMapFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `../golden/turn-map-${palette}.svg`,
  )
})

describe('cells', () => {
  const cells = cellsOf(turnMapFigure(data), 24)

  test('stand upright for what repeats every turn: bright at 0°, dark at 180°', () => {
    expect(cells).toHaveLength(12)
    for (const row of cells.filter((one) => !one.includes(0))) {
      expect(row.indexOf(Math.min(...row))).toBeGreaterThanOrEqual(11)
      expect(row.indexOf(Math.min(...row))).toBeLessThanOrEqual(12)
    }
  })

  test('grow brighter with the value', () => {
    expect(cells[11][12]).toBeGreaterThan(cells[0][12])
  })

  test('are transparent where they are empty, and nowhere else', () => {
    const empty = cells.flat().filter((index) => index === 0).length
    expect(empty).toBe([...(data.map.mean as Float64Array)].filter(Number.isNaN).length)
    // 199 samples left out from the 1501st on, 15 to a cell: 12 cells are left out whole.
    expect(empty).toBe(12)
    expect(wordsIn(turnMapFigure(data))).toContain('empty')
  })

  test('take the last colours beyond the range', () => {
    const narrow = cellsOf(turnMapFigure({ ...data, map: { ...data.map, range: [0.199, 0.201] } }), 24)
    expect(Math.max(...narrow.flat())).toBe(255)
    expect(Math.min(...narrow.flat().filter((index) => index > 0))).toBe(1)
  })

  test('all alike have one colour', () => {
    const map = turnMap(Float64Array.of(0.1, 3, 5), Float64Array.of(0.3, 0.3, 0.3), { columns: 3 })
    const svg = turnMapFigure({ ...data, map })
    expect(faultsOf(svg)).toEqual([])
    expect(new Set(cellsOf(svg, 3).flat())).toEqual(new Set([128]))
  })
})

describe('what is read', () => {
  test('no words lie over each other or outside, at any width and height', () => {
    for (const width of [480, 640, 880, 1200]) {
      for (const plotHeight of [160, 320, 600]) expect(faultsOf(turnMapFigure(data, { width, plotHeight }))).toEqual([])
    }
  })

  test('axes, steps and colours have their numbers; steps that begin close together share one', () => {
    const words = wordsIn(turnMapFigure(data))
    for (const text of [
      '0',
      '180',
      '360',
      'place in the turn (°)',
      'turns of the shaft',
      'step',
      '1–2',
      '3',
      '4',
      'friction µ',
      '(1)',
    ]) {
      expect(words).toContain(text)
    }
    expect(words).toContain('0.2')
  })

  test('units follow the quantity', () => {
    const in_ = (quantity: TurnMapFigureData['quantity'], factor: number) => {
      const mean = Float64Array.from(data.map.mean, (value) => factor * value)
      const range = data.map.range ?? [0, 1]
      return wordsIn(
        turnMapFigure({ ...data, quantity, map: { ...data.map, mean, range: [factor * range[0], factor * range[1]] } }),
      )
    }
    expect(in_('axialForce', 25)).toContain('(N)')
    expect(in_('gap', 1e-5)).toContain('(µm)')
    expect(in_('frictionSwing', 0.2)).toContain('(%)')
  })

  test('rows that hold more and more turns are told', () => {
    const uneven = { ...data, map: { ...data.map, turns: [0, 1, 2, 3, 4, 6, 8, 10, 14, 18, 30, 60, 100] } }
    const words = wordsIn(turnMapFigure(uneven))
    expect(words.some((text) => text.startsWith('Rows hold more turns where the shaft is fast.'))).toBe(true)
    expect(words).toContain('60')
    expect(wordsIn(turnMapFigure(data)).some((text) => text.startsWith('Rows hold more'))).toBe(false)
  })

  test('people who hear the picture get turns, range and how much is empty', () => {
    const words = turnMapFigure(data).match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''
    expect(words).toContain('friction µ as colour over turns 0 to 12 (down, one turn a row)')
    expect(words).toMatch(/from 0\.17\d to 0\.24\d? in the middle 99 % of the cells; 4 % of the cells are empty\./)
  })
})

test('nothing to show still makes a picture; the same bytes again', () => {
  const none = turnMap(new Float64Array(0), new Float64Array(0), { columns: 24 })
  const svg = turnMapFigure({ title: 'none', map: none, quantity: 'gap' })
  expect(faultsOf(svg)).toEqual([])
  expect(wordsIn(svg)).toContain('no value in any turn')
  expect(turnMapFigure(structuredClone(data))).toBe(turnMapFigure(data))
  expect(() => turnMapFigure(data, { plotHeight: Number.NaN })).toThrow(RangeError)
})
