import { expect, test } from 'vitest'
import { type CurveFigureData, curveFigure, curvePlaces } from '../../src/figure/index.ts'
import { inventedPoints, stribeck } from './inventedCurves.ts'

const points = inventedPoints({
  from: 0.001,
  to: 0.1,
  count: 7,
  friction: (speed, index) => (index === 3 ? null : stribeck(speed)),
})
const data: CurveFigureData = { title: 'invented', points, curve: null, window: null }

test.for([480, 720, 1200])('lie where the figure draws the points, %i px wide', (width) => {
  const places = curvePlaces(data, { width })
  const svg = curveFigure(data, { width })
  const discs = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="4.2"/g)].map((hit) => [+hit[1], +hit[2]])
  const drawn = places.filter(({ step }) => step !== 4)
  // The legend shows discs too; those of the points come first.
  for (const [index, { x, y }] of drawn.entries()) {
    expect(Math.abs(discs[index][0] - x)).toBeLessThan(0.006)
    expect(Math.abs(discs[index][1] - y)).toBeLessThan(0.006)
  }
  expect(places).toHaveLength(7)
})
