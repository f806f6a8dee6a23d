import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ByteText } from '../../../src/io/write/byteText.ts'

function written(value: number, digits: number, mark: '.' | ',' = '.'): string {
  const text = new ByteText(mark, 8)
  text.number(value, digits)
  return new TextDecoder().decode(text.take())
}

// By the definition of a rounded decimal.
const cases: [number, number, string][] = [
  [0, 7, '0'],
  [1, 7, '1'],
  [-1.5, 7, '-1.5'],
  [0.1, 7, '0.1'],
  [123456.78, 7, '123456.8'],
  [99999.996, 7, '100000'],
  [9.9999996, 7, '10'],
  [0.000123456789, 4, '0.0001235'],
  [1.0757864e-6, 7, '1.075786e-6'],
  [-2.5e-12, 3, '-2.5e-12'],
  [10_000_000, 7, '10000000'],
  [1234567.8, 3, '1230000'],
  [1.5e20, 3, '1.5e20'],
  [5e-324, 7, '4.940656e-324'],
  [1.7976931348623157e308, 7, '1.797693e308'],
  [Number.NaN, 7, ''],
  [Number.POSITIVE_INFINITY, 7, ''],
]

test.for(cases)('%d with %d digits is "%s"', ([value, digits, want]) => {
  expect(written(value, digits)).toBe(want)
})

test('comma as decimal mark', () => expect(written(-0.25, 3, ',')).toBe('-0,25'))

test('reads back within half of the last digit', () => {
  const finite = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e14, max: 1e14 })
  fc.assert(
    fc.property(finite, fc.integer({ min: 1, max: 12 }), (value, digits) => {
      const back = Number(written(value, digits))
      if (Number.isInteger(value)) return back === value
      const last = 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1)
      return Math.abs(back - value) <= 0.5000001 * last + Number.MIN_VALUE
    }),
    { numRuns: 2000 },
  )
})

test('padding moves what stands there to the right', () => {
  const text = new ByteText('.', 4)
  text.letter(65)
  const start = text.length
  text.number(1.5, 3)
  text.padFrom(start, 8)
  expect(new TextDecoder().decode(text.take())).toBe('A     1.5')
})
