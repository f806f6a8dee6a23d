import { expect, test } from 'vitest'
import { counted, grouped, listed, percent, printed, significant } from '../../../src/report/words/printed.ts'
import { printedSpan } from '../../../src/report/words/printedSpan.ts'

test('numbers in sentences', () => {
  expect(counted(1, 'step')).toBe('one step')
  expect(counted(9, 'step')).toBe('nine steps')
  expect(counted(12, 'stretch', 'stretches')).toBe('12 stretches')
  expect(counted(0, 'step')).toBe('no steps')
  expect(grouped(1234567)).toBe('1\u202f234\u202f567')
  expect(listed(['a', 'b', 'c'])).toBe('a, b and c')
  expect(listed([])).toBe('')
})

test('a unit is chosen for what is printed', () => {
  expect(printed(0.000999995, 'velocity')).toBe('1 mm/s')
  expect(printed(296.149, 'temperature', 4)).toBe('23 °C')
  expect(printed(308.16, 'temperature', 4)).toBe('35.01 °C')
})

test('a minus is a minus', () => {
  expect(printed(-0.012, 'force')).toBe('−12 mN')
  expect(percent(-0.005)).toBe('−0.5 %')
  expect(significant(-2, 4)).toBe('−2.000')
})

test('columns keep their zeroes, and no exponent stands where a plain number is short', () => {
  expect(significant(0.5, 4)).toBe('0.5000')
  expect(significant(12345678, 4)).toBe('12350000')
})

test('a span with equal ends is one value', () => {
  const print = (value: number): string => value.toFixed(1)
  expect(printedSpan([1, 3, 2], print)).toBe('1.0 to 3.0')
  expect(printedSpan([1, 1.01], print)).toBe('1.0')
  expect(printedSpan([Number.NaN], print)).toBeUndefined()
})
