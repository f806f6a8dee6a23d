import fc from 'fast-check'
import { parquetReadObjects } from 'hyparquet'
import { describe, expect, test } from 'vitest'
import { sharedSources } from '../../../src/core/terms/index.ts'
import { defused } from '../../../src/io/dataPackage/defused.ts'
import { pointsCsv, pointsJson, pointsParquet } from '../../../src/io/dataPackage/index.ts'
import { tableCsv } from '../../../src/io/dataPackage/tableCsv.ts'
import { point } from './inventedLab.ts'

const points = [point(), point({ step: 2, friction: null, low: Number.NaN, shared: {} })]

/** Rows of a CSV by RFC 4180. */
function rowsOf(csv: string): string[][] {
  const rows: string[][] = [[]]
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    rows[rows.length - 1].push(quoted?.replaceAll('""', '"') ?? plain)
    if (end !== ',') rows.push([])
  }
  return rows.slice(0, -1)
}

describe('CSV', () => {
  const [names, units, first, second] = rowsOf(pointsCsv(points))
  const cell = (row: readonly string[], name: string): string => row[names.indexOf(name)]

  test('has names, then units, then one row a point', () => {
    expect(rowsOf(pointsCsv(points))).toHaveLength(4)
    expect(units).toHaveLength(names.length)
    expect(Object.fromEntries(names.map((name, i) => [name, units[i]]))).toMatchObject({
      slidingSpeed: 'm/s',
      friction: '',
      duration: 's',
      torque: 'N·m',
      axialForce: 'N',
      gap: 'm',
      temperature: 'K',
    })
    for (const source of sharedSources) expect(names).toContain(`shared.${source}`)
  })

  test('numbers come back to the same double', () => {
    expect(Number(cell(first, 'friction'))).toBe(0.1 + 0.2)
    expect(cell(first, 'trusted')).toBe('true')
    expect(cell(first, 'direction')).toBe('-1')
  })

  test('what is not known is empty', () => {
    expect(cell(second, 'friction')).toBe('')
    expect(cell(second, 'low')).toBe('')
    expect(cell(first, 'gap')).toBe('')
    expect(cell(first, 'degreesOfFreedom')).toBe('')
    expect(cell(second, 'shared.torqueScale')).toBe('')
  })
})

const textColumn = { name: 'text', type: 'text', unit: '', about: '', cell: (row: string) => row } as const

describe('texts in cells', () => {
  test('come back as they were, or guarded by an apostrophe, and none begins a formula', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.string({ unit: fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', '"', ',', 'a', ' ', "'", 'µ') }),
        ),
        (texts) => {
          const cells = rowsOf(tableCsv([textColumn], texts))
            .slice(2)
            .map(([cell]) => cell)
          expect(cells).toEqual(texts.map(defused))
          for (const cell of cells) expect(cell).not.toMatch(/^[=+\-@\t\r\n]/)
        },
      ),
    )
  })

  // OWASP, CSV Injection: the characters that begin a formula in spreadsheets.
  test.for(['=1+1', '+1', '-1', '@A1', '\t=1', '\r=1', '\n=1', '＝1', '＋1', '－1', '＠A'])('%j is guarded', (text) => {
    expect(defused(text)).toBe(`'${text}`)
  })

  test.for(['', 'a=1', ' =1', 'oat drink', '0.5'])('%j stays', (text) => {
    expect(defused(text)).toBe(text)
  })
})

test('JSON holds the same, with null for what is not known and the units once', () => {
  const { units, rows } = JSON.parse(pointsJson(points))
  expect(units).toMatchObject({ torque: 'N·m', temperature: 'K' })
  expect(units).not.toHaveProperty('friction')
  expect(rows).toHaveLength(2)
  expect(rows[0]).toMatchObject({
    friction: 0.1 + 0.2,
    degreesOfFreedom: null,
    trusted: true,
    direction: -1,
    remarks: '',
  })
  expect(rows[1]).toMatchObject({ friction: null, low: null })
  expect(JSON.parse(pointsJson([])).rows).toEqual([])
})

test('Parquet holds the same as JSON, cell for cell, and equal points give equal bytes', async () => {
  const bytes = pointsParquet(points)
  const file = {
    byteLength: bytes.length,
    slice: (from: number, to?: number) => Uint8Array.from(bytes.subarray(from, to)).buffer,
  }
  expect(await parquetReadObjects({ file })).toEqual(JSON.parse(pointsJson(points)).rows)
  expect(Buffer.compare(pointsParquet(points), bytes)).toBe(0)
  expect(Buffer.from(bytes).toString('latin1')).toContain('"torque":"N')
})
