import fc from 'fast-check'
import { expect, test } from 'vitest'
import { characterPlot } from '../../../src/cli/show/characterPlot.ts'
import { plotScale } from '../../../src/cli/show/plotScale.ts'

const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true })
const data = fc.record({
  points: fc.array(fc.record({ speed: positive, friction: positive, trusted: fc.boolean() }), {
    minLength: 2,
    maxLength: 30,
  }),
  line: fc.array(fc.record({ speed: positive, friction: positive }), { maxLength: 20 }),
  speedUnit: fc.constant('mm/s'),
})

test('keeps within its width and height, whatever the data', () => {
  fc.assert(
    fc.property(data, fc.integer({ min: 40, max: 120 }), fc.boolean(), (given, width, unicode) => {
      const lines = (characterPlot(given, { width, rows: 12, unicode }) ?? '').split('\n')
      expect(lines).toHaveLength(15)
      expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(width)
      if (!unicode) expect(lines.join('')).toMatch(/^[\x20-\x7e]*$/)
    }),
  )
})

test('a point twice as fast and half as high stands right of and below the other', () => {
  const points = [
    { speed: 1, friction: 0.2, trusted: true },
    { speed: 2, friction: 0.1, trusted: false },
  ]
  const lines = (
    characterPlot({ points, line: [], speedUnit: 'm/s' }, { width: 60, rows: 10, unicode: false }) ?? ''
  ).split('\n')
  const find = (letter: string) => {
    const row = lines.findIndex((line) => line.includes(`|`) && line.slice(line.indexOf('|')).includes(letter))
    return { row, column: lines[row]?.lastIndexOf(letter) ?? -1 }
  }
  expect(find('o').row).toBe(0)
  expect(find('x').row).toBe(9)
  expect(find('o').column).toBeLessThan(find('x').column)
})

test('nothing to draw of one point or none', () => {
  const options = { width: 60, rows: 10, unicode: true }
  expect(characterPlot({ points: [], line: [], speedUnit: 'm/s' }, options)).toBeUndefined()
  expect(
    characterPlot({ points: [{ speed: 1, friction: 1, trusted: true }], line: [], speedUnit: 'm/s' }, options),
  ).toBeUndefined()
})

test.for([
  { values: [1, 1000], want: [1, 10, 100, 1000] },
  { values: [0.9, 11], want: [1, 2, 5, 10] },
  { values: [0.26, 0.29], want: [0.26, 0.265, 0.27, 0.275, 0.28, 0.285, 0.29] },
])('ticks of $values are round', ({ values, want }) => {
  const ticks = plotScale(values)?.ticks ?? []
  expect(ticks.length).toBeGreaterThanOrEqual(3)
  for (const tick of ticks) expect(want).toContain(tick)
})
