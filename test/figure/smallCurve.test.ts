import { expect, test } from 'vitest'
import { type SmallCurveData, smallCurve, smallCurveAxes } from '../../src/figure/index.ts'
import { inventedPoints, stribeck } from './inventedCurves.ts'
import { wellFormed } from './wellFormed.ts'

const points = inventedPoints({ from: 0.001, to: 0.1, count: 5, friction: stribeck, trusted: (step) => step !== 2 })
const data: SmallCurveData = {
  points,
  line: points.map(({ slidingSpeed }) => ({ slidingSpeed, friction: stribeck(slidingSpeed) })),
  words: 'Lacquer A, 1: five points',
}
const options = { palette: 'light', width: 120, height: 60 } as const

const centres = (svg: string) => [...svg.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g)].map((hit) => [+hit[1], +hit[2]])

test('points lie at even steps of the logarithm of speed, the first and last at the edge', () => {
  const places = centres(smallCurve(data, options)).map(([x]) => x)
  expect(places).toEqual([6, 33, 60, 87, 114])
})

test('what the fit leaves out is hollow', () => {
  const fills = [...smallCurve(data, options).matchAll(/r="2.2" fill="([^"]*)"/g)].map((hit) => hit[1])
  expect(fills.map((fill) => fill === fills[0])).toEqual([true, false, true, true, true])
})

test('curves on common axes can be compared', () => {
  const higher = { ...data, points: points.map((one) => ({ ...one, friction: 2 * (one.friction ?? 0) })) }
  const axes = smallCurveAxes([data, higher])
  const heights = (one: SmallCurveData) => centres(smallCurve({ ...one, ...axes }, options)).map(([, y]) => y)
  expect(heights(higher)[0]).toBeLessThan(heights(data)[0])
  expect(axes.speeds?.map((speed) => Number(speed.toPrecision(9)))).toEqual([0.001, 0.1])
})

test('draws what cannot be drawn as an empty field, and words are never markup', () => {
  const svg = smallCurve({ points: [], line: [], words: 'a <b> & "c"' }, options)
  expect(wellFormed(svg)).toBe(true)
  expect(svg).not.toContain('<b>')
  const one = smallCurve(
    { points: [{ slidingSpeed: 0.01, friction: 0, trusted: true }], line: [], words: 'one' },
    options,
  )
  expect(one).not.toContain('NaN')
})
