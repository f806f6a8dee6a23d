import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CellReader } from '../../../src/io/table/cellReader.ts'
import { NumberBytes, thousandsByte } from '../../../src/io/table/numberBytes.ts'

const point = { decimal: 46, thousands: 0 }

/** Reads one cell both ways: as the only cell of a line, and by the complete reader. */
function read(text: string, marks = point): { cell: number; whole: number; content: string } {
  const bytes = new TextEncoder().encode(`${text}\n`)
  const cells = new CellReader({ ...marks, separator: 59 })
  cells.bytes = bytes
  const out = new Float64Array(1)
  const end = cells.read(0, out, 0)
  const general = new NumberBytes(marks)
  const content = general.read(bytes, 0, bytes.length - 1)
  expect(end, 'both readers agree on what a number is').toBe(content === 'damaged' ? -1 : bytes.length - 1)
  return { cell: out[0], whole: general.value, content }
}

// The language's own reading (ECMA-262, StringToNumber) is the standard: nearest double, ties to even.
const texts = [
  '0',
  '-0',
  '7',
  '-12.5',
  '+3.25',
  '.5',
  '5.',
  '0.1',
  '0.30000000000000004',
  '1.7976931348623157e308',
  '4.9406564584124654e-324',
  '2.2250738585072011e-308',
  '123456789',
  '1234567890',
  '999999999.9',
  '4294967296',
  '42949672960.000000',
  '9007199254740993',
  '9007199254740991e22',
  '9007199254740993e-22',
  '0.000000000000000000001234567890123456',
  '123456789012345678901234567890',
  '0.1000000000000000055511151231257827021181583404541015625',
  '1.00000000000000011102230246251565404236316680908203125',
  '1e22',
  '1e23',
  '8.5e-7',
  '7.504828e-07',
  '1E+5',
  '3e0',
  '00012.50',
  '000000000000012',
  '0.00001234567',
]

test.for(texts)('%s is the nearest double', (text) => {
  const { cell, whole } = read(text)
  expect(cell).toBe(Number(text))
  expect(whole).toBe(Number(text))
})

test('any double in any of its spellings comes back bit for bit', () => {
  const spell = fc.tuple(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.nat(4),
    fc.integer({ min: 1, max: 21 }),
  )
  fc.assert(
    fc.property(spell, ([value, how, digits]) => {
      const size = Math.abs(value)
      const ways = [
        String(value),
        value.toPrecision(digits),
        value.toExponential(digits - 1),
        size < 1e20 ? value.toFixed(Math.min(digits, 12)) : String(value),
        value.toPrecision(17),
      ]
      fc.pre(Number.isFinite(Number(ways[how])))
      const { cell, whole } = read(ways[how])
      expect(Object.is(cell, Number(ways[how]))).toBe(true)
      expect(Object.is(whole, Number(ways[how]))).toBe(true)
    }),
    { numRuns: 20_000 },
  )
})

test('digits and powers of ten around the limits of the short ways', () => {
  const digit = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 24 }).map((all) => all.join(''))
  fc.assert(
    fc.property(digit, fc.nat(24), fc.integer({ min: -50, max: 50 }), (digits, point_, power) => {
      const at = Math.min(point_, digits.length)
      const text = `${digits.slice(0, at)}.${digits.slice(at)}e${power}`
      expect(read(text).cell).toBe(Number(text))
    }),
    { numRuns: 20_000 },
  )
})

describe('marks', () => {
  const comma = { decimal: 44, thousands: 46 }
  const cases: [string, { decimal: number; thousands: number }, number][] = [
    ['0,5', comma, 0.5],
    ['1.234,5', comma, 1234.5],
    ['-1.234.567,25', comma, -1234567.25],
    ['1.234', comma, 1234],
    ['1,234.5', { decimal: 46, thousands: 44 }, 1234.5],
    ['1 234,5', { decimal: 44, thousands: 32 }, 1234.5],
    ["1'234'567.5", { decimal: 46, thousands: 39 }, 1234567.5],
    ['1 234 567', { decimal: 44, thousands: 32 }, 1234567],
    // Not seen before, but the decimal mark behind leaves no doubt.
    ['1,234.5', point, 1234.5],
    ['1 234.5', point, 1234.5],
    ['12 345,6', { decimal: 44, thousands: thousandsByte('\u00a0') }, 12345.6],
    ['12\u00a0345,6', { decimal: 44, thousands: thousandsByte('\u00a0') }, 12345.6],
    ['\u22121.5', point, -1.5],
    ['12\u2019345.5', { decimal: 46, thousands: thousandsByte('’') }, 12345.5],
    ['1.5d-3', point, 0.0015],
  ]
  test.for(cases)('%s', ([text, marks, want]) => {
    expect(read(text, marks).cell).toBe(want)
  })

  // 1,234 alone may be a decimal in the wrong spelling: never read as a thousand.
  test.for([
    '1,234',
    '12,34.5',
    '1,2345.6',
    '1,23,456.7',
    '1 23.4',
    '1..2',
    '1.2.3',
    '--1',
    '1e',
    '1e+',
    '1e12345',
    '0x10',
    'abc',
    '1,5',
    '5 N',
    '-.',
    '+',
    'e5',
    '12:30',
    '1e400',
  ])('%s is no number where the point is the decimal mark', (text) => {
    expect(read(text).content).toBe('damaged')
  })

  test.for([
    'NaN',
    'nan',
    '-nan',
    'inf',
    '-Inf',
    'Infinity',
    'n/a',
    'NA',
    '#N/A',
    '--',
    '-',
    '---',
    'null',
    '1.#QNAN',
    '-1.#INF00',
  ])('%s is a word for nothing', (text) => {
    const { cell, content } = read(text)
    expect(content).toBe('wordForNothing')
    expect(cell).toBeNaN()
  })

  test('a cell of ten megabytes is damage, and soon said', () => {
    const bytes = new Uint8Array(10_000_001).fill(49)
    expect(new NumberBytes(point).read(bytes, 0, 10_000_000)).toBe('damaged')
  })
})

describe('cells in a line', () => {
  function cells(line: string, separator: string, decimal = '.'): number[] {
    const bytes = new TextEncoder().encode(`${line}\n`)
    const reader = new CellReader({ separator: separator.charCodeAt(0), decimal: decimal.charCodeAt(0), thousands: 0 })
    reader.bytes = bytes
    const out = new Float64Array(20)
    let at = 0
    let p = 0
    for (; p >= 0 && p < bytes.length; p++) {
      p = reader.read(p, out, at++)
      if (p < 0) return [-1]
    }
    return [...out.subarray(0, at)]
  }
  const N = Number.NaN
  test.for([
    ['1,2,3', ',', [1, 2, 3]],
    [' 1 , 2 ,3 ', ',', [1, 2, 3]],
    ['1,,3,', ',', [1, N, 3, N]],
    ['"1","2.5",3', ',', [1, 2.5, 3]],
    ['"1" ,"" , "3"', ',', [1, N, 3]],
    ['1\t\t3', '\t', [1, N, 3]],
    ['1;2;3', ';', [1, 2, 3]],
    ['  1.5   2.5\t3', ' ', [1.5, 2.5, 3]],
    ['1|2', '|', [1, 2]],
    ['"1', ',', [-1]],
    ['"1"2', ',', [-1]],
  ] as [string, string, number[]][])('%s', ([line, separator, want]) => {
    expect(cells(line, separator)).toEqual(want)
  })

  test('commas for both jobs, with quotation marks around what has a fraction', () => {
    expect(cells('1,"2,5","1.234,5"', ',', ',')).toEqual([1, 2.5, 1234.5])
  })

  test('steps over cells of any kind', () => {
    const bytes = new TextEncoder().encode('"a;b ""c""" x;d;\n')
    const reader = new CellReader({ separator: 59, decimal: 46, thousands: 0 })
    reader.bytes = bytes
    expect(reader.skip(0)).toBe(13)
    expect(reader.skip(14)).toBe(15)
    expect(reader.skip(16)).toBe(16)
  })
})
