import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { around, panned, span, zoomed } from '../../../../../src/web/stations/read/strip/view.ts'

const whole = { from: 10, to: 110 }
const limits = { whole, shortest: 0.5 }

describe('zoom', () => {
  test('closer by half about a time leaves that time where it was', () => {
    expect(zoomed(whole, { factor: 0.5, at: 35 }, limits)).toEqual({ from: 22.5, to: 72.5 })
  })

  test('never beyond the record and never closer than the shortest', () => {
    expect(zoomed({ from: 20, to: 60 }, { factor: 100, at: 30 }, limits)).toEqual(whole)
    expect(span(zoomed({ from: 20, to: 21 }, { factor: 1e-6, at: 20.5 }, limits))).toBeCloseTo(0.5, 12)
  })

  test('there and back is where one was, away from the ends', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 0.99, noNaN: true }), (factor) => {
        const start = { from: 50, to: 60 }
        const back = zoomed(zoomed(start, { factor, at: 54 }, limits), { factor: 1 / factor, at: 54 }, limits)
        expect(Math.abs(back.from - start.from)).toBeLessThan(1e-9)
        expect(Math.abs(back.to - start.to)).toBeLessThan(1e-9)
      }),
    )
  })
})

test('panning stops at the ends and keeps the span', () => {
  expect(panned({ from: 20, to: 30 }, -50, limits)).toEqual({ from: 10, to: 20 })
  expect(panned({ from: 20, to: 30 }, 500, limits)).toEqual({ from: 100, to: 110 })
  expect(panned({ from: 20, to: 30 }, 7, limits)).toEqual({ from: 27, to: 37 })
})

test('a stretch comes into sight with its margin', () => {
  expect(around({ from: 40, to: 60 }, 0.1, limits)).toEqual({ from: 38, to: 62 })
  expect(span(around({ from: 40, to: 40.1 }, 0, limits))).toBeCloseTo(0.5, 12)
})
