import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { recordTurnMap, turnQuantities } from '../../src/core/reduce/index.ts'
import { budgetFigure, curveFigure, remarksFigure, stripFigure, turnMapFigure } from '../../src/figure/index.ts'
import { faultsOf } from './faultsOf.ts'
import { realRecord, stripOf } from './realRecords.ts'

// One of each kind of record; the ten varnish records are alike.
const names = readdirSync('test/data/records')
  .filter((name) => name.endsWith('.csv') && !/^varnish-.-[2-5]/.test(name))
  .map((name) => name.slice(0, -4))

test('there are records to draw', () => expect(names.length).toBeGreaterThan(8))

describe.each(names)('every picture of %s is sound', (name) => {
  const record = realRecord(name)
  const words = { title: `${name} (invented)`, note: 'Invented data: no lab measured them.' }

  test('strip', async () => {
    for (const width of [640, 880]) expect(faultsOf(stripFigure(stripOf(await record, width), { width }))).toEqual([])
  })

  test('curve, budget and remarks', async () => {
    const { points, window, remarks } = (await record).reduction
    expect(faultsOf(curveFigure({ ...words, points, curve: null, window }))).toEqual([])
    for (const width of [480, 880]) {
      expect(faultsOf(budgetFigure({ ...words, points }, { width }))).toEqual([])
      expect(faultsOf(remarksFigure({ ...words, points, remarks }, { width }))).toEqual([])
    }
  })

  test('turn maps', async () => {
    for (const quantity of turnQuantities) {
      const map = recordTurnMap(await record, quantity)
      expect(map.rows).toBeGreaterThan(0)
      expect(faultsOf(turnMapFigure({ ...words, map, quantity, steps: map.steps }))).toEqual([])
    }
  })
})

test('a tilted plate stands upright in its turn map', async () => {
  const map = recordTurnMap(await realRecord('tilted-plate'), 'axialForce', { columns: 36 })
  // The record was made with a force that swings by 7 % once a turn (its truth file).
  const means = Array.from({ length: 36 }, (_, column) => {
    const cells = [...map.mean].filter((value, cell) => cell % 36 === column && !Number.isNaN(value))
    return cells.reduce((sum, value) => sum + value, 0) / cells.length
  })
  const swing = (Math.max(...means) - Math.min(...means)) / (Math.max(...means) + Math.min(...means))
  expect(swing).toBeGreaterThan(0.06)
  expect(swing).toBeLessThan(0.08)
})
