import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { StripFigureData } from '../../../src/figure/index.ts'
import { type PaletteName, stripColumns, stripFigure } from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { inventedStrip } from './inventedStrip.ts'

const strip = inventedStrip(6000, stripColumns())

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(stripFigure(inventedStrip(300, 60), { palette, id: 'golden' }))).toMatchFileSnapshot(
    `../golden/strip-${palette}.svg`,
  )
})

const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

describe('what is read', () => {
  test('no words lie over each other or outside, at any width and height', () => {
    for (const width of [480, 640, 880, 1200]) {
      for (const panelHeight of [40, 64, 120]) expect(faultsOf(stripFigure(strip, { width, panelHeight }))).toEqual([])
    }
  })

  test('every channel has its name, its unit and at least two values', () => {
    const words = wordsIn(stripFigure(strip))
    for (const text of [
      'rotation',
      '(rad/s)',
      'torque',
      '(mN·m)',
      'axial force',
      '(N)',
      'gap',
      '(µm)',
      'temperature',
      '(°C)',
      'time (s)',
    ]) {
      expect(words).toContain(text)
    }
    const labels = [...stripFigure(strip).matchAll(/<text x="59"[^>]*text-anchor="end">([^<]*)</g)].map((hit) => hit[1])
    expect(labels.length).toBeGreaterThanOrEqual(10)
  })

  test('steps have their numbers, stretches their words and shares', () => {
    const words = wordsIn(stripFigure(strip))
    for (const step of ['1', '2', '3', '4']) expect(words).toContain(step)
    expect(words).toContain('accepted, 52 %')
    expect(words).toContain('not used by the fit, 20 %')
    expect(words).toContain('cut as warm-up, 5 %')
    expect(words).toContain('out of contact, 3.3 %')
    expect(words).toContain('blank, no contact meant, 20 %')
  })

  test('people who hear the picture get channels, ranges and shares', () => {
    const words = stripFigure(strip).match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''
    expect(words).toContain('Raw channels over 600 s, 4 steps.')
    expect(words).toContain('accepted 52 %')
    expect(words).toContain('axial force from 20 mN to 5.02 N.')
  })
})

/** Paths of the traces, from top to bottom. */
const traces = (data: StripFigureData): readonly string[] =>
  [...stripFigure(data).matchAll(/<path d="(M[^"]*)" transform="scale\(0.1\)"/g)].map((hit) => hit[1])

/** Places that a trace goes through, in pixels. */
function placesOf(path: string): readonly { readonly x: number; readonly y: number }[] {
  let at = { x: 0, y: 0 }
  return [...path.matchAll(/([Mlv])(-?\d+)(?: (-?\d+))?/g)].map(([, kind, first, second]) => {
    const [one, two] = [Number(first) / 10, Number(second) / 10]
    if (kind === 'M') at = { x: one, y: two }
    else if (kind === 'l') at = { x: at.x + one, y: at.y + two }
    else at = { x: at.x, y: at.y + one }
    return at
  })
}

test('a trace goes through the smallest and largest of each column', () => {
  const columns = { min: Float64Array.of(1, 2, 5), max: Float64Array.of(3, 2, 9) }
  const data = {
    title: 'three',
    time: [0, 3] as const,
    channels: [{ name: 'axialForce' as const, columns }],
    stretches: [],
  }
  const places = placesOf(traces(data)[0])
  const [left, right] = [66, 880 - 110]
  const y = (value: number): number => places[1].y + ((value - 1) / (3 - 1)) * (places[0].y - places[1].y)
  const middles = [1, 3, 5].map((sixth) => left + (sixth * (right - left)) / 6)
  const want = [
    [0, 3],
    [0, 1],
    [1, 2],
    [2, 5],
    [2, 9],
  ].map(([column, value]) => ({ x: middles[column], y: y(value) }))
  expect(places).toHaveLength(want.length)
  for (const [index, place] of places.entries()) {
    expect(place.x).toBeCloseTo(want[index].x, 0)
    expect(Math.abs(place.y - want[index].y)).toBeLessThan(0.5)
  }
})

describe('scales', () => {
  test('serve the rows in contact: an open gap does not flatten the rest', () => {
    const heights = placesOf(traces(strip)[3]).map(({ y }) => y)
    // Two edges of the panel hold the cut-off rest; the cosine in contact fills what lies between.
    const inside = heights.filter((y) => y > Math.min(...heights) + 2 && y < Math.max(...heights) - 2)
    expect(inside.length).toBeGreaterThan(500)
    expect(Math.max(...inside) - Math.min(...inside)).toBeGreaterThan(0.7 * 64)
    expect(wordsIn(stripFigure(strip)).some((text) => text.includes('Scales serve the rows in contact'))).toBe(true)
  })

  test('a channel in which nothing is out of scale needs no such note', () => {
    const only = { ...strip, channels: strip.channels.filter(({ name }) => name === 'temperature') }
    expect(wordsIn(stripFigure(only)).some((text) => text.includes('Scales serve'))).toBe(false)
  })

  test('a line breaks where numbers are missing', () => {
    const path = traces(strip)[4]
    expect(path.match(/M/g)).toHaveLength(2)
  })
})

describe('any data', () => {
  const value = fc.oneof(fc.double({ min: -1e3, max: 1e3, noNaN: true }), fc.constantFrom(0, Number.NaN, 1e300, 1e-300))
  const columns = fc.array(value, { minLength: 1, maxLength: 50 }).map((list) => {
    const low = Float64Array.from(list)
    return { min: low, max: low.map((one) => one + Math.abs(one) * 0.1) }
  })
  const channel = fc.record({
    name: fc.constantFrom('torque' as const, 'gap' as const, 'temperature' as const, 'step' as const),
    columns,
  })

  test('gives a well-formed picture without a number that is none, the same again', () => {
    fc.assert(
      fc.property(fc.array(channel, { maxLength: 4 }), (channels) => {
        const data = { ...strip, channels }
        const svg = stripFigure(data)
        expect(faultsOf(svg).filter((fault) => !fault.startsWith('o'))).toEqual([])
        expect(stripFigure(structuredClone(data))).toBe(svg)
      }),
      { numRuns: 100 },
    )
  })
})

test('a channel without a number and a record without stretches still make a picture', () => {
  const empty = { min: new Float64Array(5).fill(Number.NaN), max: new Float64Array(5).fill(Number.NaN) }
  const svg = stripFigure({
    title: 'empty',
    time: [0, 1],
    channels: [{ name: 'torque', columns: empty }],
    stretches: [],
  })
  expect(faultsOf(svg)).toEqual([])
  expect(wordsIn(svg)).toContain('no number in this channel')
})

test('refuses a time that does not pass and panels that nobody can read', () => {
  expect(() => stripFigure({ ...strip, time: [1, 1] })).toThrow('time must end after it begins, got 1 to 1 s')
  expect(() => stripFigure(strip, { panelHeight: 10 })).toThrow('panelHeight must be 36 to 400 px, got 10 px')
})

test('a long record has minutes or hours on its axis', () => {
  expect(wordsIn(stripFigure({ ...strip, time: [0, 3600] }))).toContain('time (min)')
  expect(wordsIn(stripFigure({ ...strip, time: [0, 86_400] }))).toContain('time (h)')
})
