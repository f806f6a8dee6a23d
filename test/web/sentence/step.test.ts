import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dragged, type Stepping, stepped } from '../../../src/web/sentence/step.ts'

const log: Stepping = { by: 'log', size: 1e-6, least: 1e-6, most: 1e6 }
const even: Stepping = { by: 'even', size: 0.05, least: 0.1, most: 1 }

describe('steps of an arrow', () => {
  test.for([
    [5, 1, 6],
    [5, -1, 4],
    [8, 1, 10],
    [10, -1, 8],
    [0.1, -1, 0.08],
    [5.3, 1, 6],
    [5.3, -1, 5],
    [1, 10, 10],
    [0.00635, 1, 0.008],
  ])('%d by %d goes to the round number %d', ([value, count, want]) => {
    expect(stepped(value, count, log)).toBeCloseTo(want, 12)
  })

  test('even steps keep their size and stop at the ends', () => {
    expect(stepped(0.15, 1, even)).toBe(0.2)
    expect(stepped(0.98, 1, even)).toBe(1)
    expect(stepped(0.12, -3, even)).toBe(0.1)
  })

  test('there and back again from a round number', () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 1.2, 2, 5, 8), fc.integer({ min: -4, max: 4 }), (mantissa, decade) => {
        const value = Number(`${mantissa}e${decade}`)
        expect(stepped(stepped(value, 1, log), -1, log)).toBeCloseTo(value, 12)
      }),
    )
  })
})

describe('a drag', () => {
  test('230 pixels make a decade', () => {
    expect(dragged(5, 230, log)).toBe(50)
    expect(dragged(5, -230, log)).toBe(0.5)
  })

  test('no way changes nothing', () => {
    expect(dragged(6.35, 0, log)).toBe(6.35)
  })

  test('stays in the range', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), (pixels) => {
        const value = dragged(1, pixels, { ...log, least: 0.2, most: 30 })
        return value >= 0.2 && value <= 30
      }),
    )
  })
})
