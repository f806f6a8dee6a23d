import { describe, expect, test } from 'vitest'
import type { Point } from '../../../src/core/terms/index.ts'
import { budgetRows } from '../../../src/figure/budget/budgetRows.ts'
import { type BudgetFigureData, budgetFigure, type PaletteName } from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { inventedPoints, nothing, stribeck } from '../inventedCurves.ts'

/** Twelve steps whose uncertainties are stated shares of their friction; the blank weighs more where friction is low. */
const points: readonly Point[] = inventedPoints({ from: 0.003, to: 0.3, count: 12, friction: stribeck }).map(
  (point) => {
    const friction = point.friction ?? 0
    const shared = {
      torqueScale: 0.0029 * friction,
      forceScale: 0.0058 * friction,
      forceZero: 0,
      torqueBlank: 0.0003,
      lever: 0.0013 * friction,
      tilt: 0,
    }
    return { ...point, shared, sharedUncertainty: Math.hypot(...Object.values(shared)) }
  },
)

const data: BudgetFigureData = {
  title: 'Lacquer B on beech, what makes the uncertainty (invented)',
  caption: 'twelve steps from 3 to 300 mm/s',
  points,
  note: 'Invented data: no lab measured them.',
}

const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(budgetFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `../golden/budget-${palette}.svg`,
  )
})

describe('rows', () => {
  const { rows, nothing: none, absent } = budgetRows(points)

  test('own first, the shared ones together, then by source with the largest first', () => {
    expect(rows.map(({ words }) => words)).toEqual([
      'own part of one step',
      'all shared parts together',
      'scale of the axial force',
      'torque blank',
      'scale of the torque',
      'lever arm and load factor',
    ])
  })

  test('median and range as shares of friction, by hand', () => {
    const [own, , force, blank] = rows
    expect(own.median).toBeCloseTo(0.004, 9)
    expect([force.low, force.median, force.high].map((share) => Number(share.toFixed(9)))).toEqual([
      0.0058, 0.0058, 0.0058,
    ])
    const shares = points.map(({ friction }) => 0.0003 / (friction ?? 0)).sort((one, two) => one - two)
    expect(blank.median).toBeCloseTo((shares[5] + shares[6]) / 2, 12)
    expect([blank.low, blank.high]).toEqual([shares[0], shares[11]])
  })

  test('sources that make nothing are named', () => {
    expect(none).toEqual(['zero of the axial force', 'tilt'])
    expect(absent).toEqual([])
    expect(wordsIn(budgetFigure(data)).join(' ')).toContain('Not given or none: zero of the axial force, tilt.')
  })

  test('a source that no point names is no part of the budget', () => {
    const bare = points.map((point) => ({ ...point, shared: { torqueScale: 0.001 } }))
    expect(budgetRows(bare).absent).toContain('tilt')
    expect(budgetRows(bare).absent).toContain('load factor')
  })

  test('points that the fit leaves out do not count, unless there are no others', () => {
    const wild = { ...points[0], ownUncertainty: 1, trusted: false }
    expect(budgetRows([...points, wild]).rows[0].high).toBeLessThan(0.01)
    expect(budgetRows([wild]).rows[0].high).toBeGreaterThan(1)
  })
})

/** Right ends of the bars, from top to bottom. */
const bars = (svg: string): readonly number[] =>
  [...svg.matchAll(/<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="12"/g)].map((hit) => Number(hit[2]))

test('bars are as long as their medians', () => {
  const [own, together, ...sources] = bars(budgetFigure(data))
  const { rows } = budgetRows(points)
  expect(sources).toHaveLength(4)
  expect(own / together).toBeCloseTo(rows[0].median / rows[1].median, 2)
  for (const [index, bar] of sources.entries()) {
    expect(bar / sources[0]).toBeCloseTo(rows[index + 2].median / rows[2].median, 2)
  }
})

test('a range far beyond the bars leaves the plot as an arrow and stays in words', () => {
  const wild = points.map((point, index) =>
    index === 3 ? { ...point, ownUncertainty: 5 * (point.friction ?? 0) } : point,
  )
  const svg = budgetFigure({ ...data, points: wild })
  expect(faultsOf(svg)).toEqual([])
  expect(wordsIn(svg)).toContain('0.4 %  (0.4 to 500 %)')
  expect(svg).toMatch(/l6 4l-6 4/)
})

test('no words lie over each other or outside, at any width', () => {
  for (const width of [480, 640, 880, 1200]) {
    expect(faultsOf(budgetFigure(data, { width }))).toEqual([])
    expect(faultsOf(budgetFigure({ ...data, points: nothing.points }, { width }))).toEqual([])
  }
})

test('without friction there is no budget, and it says so', () => {
  expect(wordsIn(budgetFigure({ ...data, points: [] }))).toContain('no step gave a friction value')
})

test('people who hear the picture get the numbers; the same bytes again', () => {
  const svg = budgetFigure(data)
  const words = svg.match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''
  expect(words).toContain('median over 12 of 12 steps')
  expect(words).toContain('scale of the axial force: 0.58 %.')
  expect(budgetFigure(structuredClone(data))).toBe(svg)
})
