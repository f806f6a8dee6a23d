import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Point, RemarkKind } from '../../src/core/terms/index.ts'
import { remarkKinds } from '../../src/core/terms/index.ts'
import { type CurveFigureData, curveFigure } from '../../src/figure/index.ts'
import { goldenText } from './goldenText.ts'
import * as invented from './inventedCurves.ts'
import { overlaps, textBoxes } from './textBoxes.ts'
import { wellFormed } from './wellFormed.ts'

const { nothing, trouble, twelve, twentyEight, two } = invented
const pictures = [
  { name: 'twelve-light', data: twelve, palette: 'light' },
  { name: 'twelve-dark', data: twelve, palette: 'dark' },
  { name: 'twenty-eight-light', data: twentyEight, palette: 'light' },
  { name: 'two-print', data: two, palette: 'print' },
  { name: 'trouble-print', data: trouble, palette: 'print' },
  { name: 'nothing-dark', data: nothing, palette: 'dark' },
] as const

test.for(pictures)('draws $name as it lies in golden/', async ({ name, data, palette }) => {
  const svg = curveFigure(data, { palette })
  await expect(goldenText(svg)).toMatchFileSnapshot(`golden/${name}.svg`)
})

describe('any data', () => {
  const value = fc.oneof(
    fc.double({ min: -1, max: 3, noNaN: true }),
    fc.constantFrom(0, 1e-300, 1e300, -0.01, Number.NaN, Number.POSITIVE_INFINITY),
  )
  const point = fc
    .record({
      slidingSpeed: fc.oneof(fc.double({ min: 1e-9, max: 10, noNaN: true }), fc.constantFrom(0, -1, Number.NaN)),
      friction: fc.option(value),
      low: fc.option(value),
      high: fc.option(value),
      sharedUncertainty: fc.option(value),
      trusted: fc.boolean(),
      direction: fc.constantFrom<1 | -1>(1, -1),
      kinds: fc.array(fc.constantFrom<RemarkKind>(...remarkKinds), { maxLength: 5 }),
    })
    .map(({ kinds, ...rest }): Omit<Point, 'step'> => {
      const [base] = invented.inventedPoints({ from: 1, to: 1, count: 1, friction: () => 0.1 })
      if (base === undefined) throw new Error('one point was asked for')
      return { ...base, ...rest, remarks: kinds.map((kind) => invented.inventedRemark(kind)) }
    })
  const data = fc.record({
    title: fc.string({ unit: 'binary' }),
    points: fc
      .array(point, { maxLength: 40 })
      .map((points) => points.map((one, index): Point => ({ ...one, step: index + 1 }))),
    curve: fc.constantFrom(null, invented.inventedCurve(0.001, 0.1, invented.stribeck)),
    window: fc.constantFrom(null, invented.inventedWindow(0.002, 0.1), invented.inventedWindow(null, null)),
  })

  test('gives a well-formed picture without NaN, Infinity or undefined', () => {
    fc.assert(
      fc.property(data, fc.constantFrom('auto' as const, 'log' as const, 'linear' as const), (given, frictionAxis) => {
        const svg = curveFigure(given satisfies CurveFigureData, { frictionAxis })
        expect(wellFormed(svg)).toBe(true)
        const drawn = svg.replace(/<(title|desc)[^>]*>[^<]*<\/\1>/g, '').replace(/<text[^>]*>[^<]*<\/text>/, '')
        expect(drawn).not.toMatch(/NaN|Infinity|undefined/)
      }),
      { numRuns: 150 },
    )
  })

  test('gives the same bytes again', () => {
    fc.assert(
      fc.property(data, (given) => curveFigure(structuredClone(given)) === curveFigure(given)),
      { numRuns: 20 },
    )
  })
})

test.for([
  { name: 'twelve', data: twelve },
  { name: 'twenty-eight', data: twentyEight },
  { name: 'two', data: two },
  { name: 'trouble', data: trouble },
  { name: 'nothing', data: nothing },
])('no words lie over each other or outside: $name', ({ data }) => {
  for (const width of [640, 880, 1200]) {
    const boxes = textBoxes(curveFigure(data, { width }))
    expect(boxes.length).toBeGreaterThan(8)
    expect(overlaps(boxes)).toEqual([])
    expect(boxes.filter((box) => box.left < 0 || box.right > width).map((box) => box.text)).toEqual([])
  }
})

test('the check for overlaps sees one', () => {
  const twice = '<text x="10" y="10" font-size="10">words</text><text x="15" y="12" font-size="10">over</text>'
  expect(overlaps(textBoxes(twice))).toEqual(['words | over'])
})

test('people who hear the picture get its window, its plateau and its remarks', () => {
  const svg = curveFigure(twelve, { id: 'first' })
  expect(svg).toContain('role="img" aria-labelledby="first-title first-desc"')
  const words = svg.match(/<desc id="first-desc">([^<]*)<\/desc>/)?.[1] ?? ''
  expect(words).toContain(twelve.window?.sentence)
  expect(words).toContain(twelve.window?.plateau.sentence)
  expect(words).toContain('Under one turn: steps 1, 2.')
  expect(words).toContain('12 of 12 steps, from 3 to 300 mm/s')
})

test('each limit that bites is named with its speed, the others are not', () => {
  const svg = curveFigure(twelve)
  expect(svg).toContain('torque floor: from 2.9 mm/s')
  expect(svg).toContain('partial turn: from 4.8 mm/s')
  expect(svg).toContain('inertia: up to 180 mm/s')
  expect(svg).not.toContain('wind-up:')
})

test('friction that hardly changes gets a linear axis, a wide range a logarithm', () => {
  const grid = (data: CurveFigureData): readonly number[] =>
    [...curveFigure(data).matchAll(/text-anchor="end">([\d.]+)</g)].map((hit) => Number(hit[1]))
  const ticks = grid(twentyEight)
  const steps = ticks.slice(1).map((tick, index) => tick - (ticks[index] ?? 0))
  expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-9)
  expect(grid(trouble)).toContain(0.01)
  expect(grid(trouble)).toContain(0.1)
})

test('a sign stands on the step that has the remark', () => {
  const only = {
    ...two,
    points: two.points.map((point) =>
      point.step === 2 ? { ...point, remarks: [invented.inventedRemark('stickSlip', 2)] } : point,
    ),
  }
  const svg = curveFigure(only)
  const second = svg.match(/Step 2:[^<]*<\/title>.*?<circle cx="([\d.]+)"/s)?.[1]
  const signs = [...svg.matchAll(/<text x="([\d.]+)"[^>]*font-size="9.5"[^>]*>a</g)].map((hit) => hit[1])
  expect(signs[0]).toBe(second)
  expect(signs).toHaveLength(2)
})

test.for([
  { option: { width: 100 }, says: 'width must be 480 to 2000 px, got 100 px' },
  { option: { width: Number.NaN }, says: 'width must be' },
  { option: { plotHeight: Number.NaN }, says: 'plotHeight must be 160 to 1200 px' },
])('refuses $option', ({ option, says }) => {
  expect(() => curveFigure(two, option)).toThrow(says)
})

test('a figure takes at most 5 ms', () => {
  const times = Array.from({ length: 30 }, () => {
    const start = performance.now()
    curveFigure(trouble)
    return performance.now() - start
  })
  expect(Math.min(...times)).toBeLessThan(5)
})
