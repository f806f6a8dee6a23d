import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Dimension,
  dimensions,
  parseQuantity,
  printExact,
  printQuantity,
  unitsFor,
  unitsOf,
} from '../../../src/core/quantity/index.ts'

/** Texts as people write them in setup files; values by hand from the definitions of the units. */
const written: readonly (readonly [text: string, dimension: Dimension, value: number])[] = [
  ['6.35 mm', 'length', 0.00635],
  ['6,35mm', 'length', 0.00635],
  ['.5 mm', 'length', 0.0005],
  ['5. mm', 'length', 0.005],
  ['1/2 in', 'length', 0.0127],
  ['½ in', 'length', 0.0127],
  ['1 1/2 in', 'length', 0.0381],
  ['0,5 %', 'ratio', 0.005],
  ['0.05', 'ratio', 0.05],
  ['3', 'count', 3],
  ['5 N', 'force', 5],
  ['−5 N', 'force', -5],
  ['10 000 N', 'force', 10000],
  ['10 000.5 N', 'force', 10000.5],
  ['5·10⁻³ N', 'force', 0.005],
  ['5 × 10^-3 N', 'force', 0.005],
  ['0,125 N', 'force', 0.125],
  ['2 kgf', 'force', 19.6133],
  ['23 °C', 'temperature', 296.15],
  ['73.4 °F', 'temperature', 296.15],
  ['2 K', 'temperatureDifference', 2],
  ['2 °C', 'temperatureDifference', 2],
  ['1e-3 N·m', 'torque', 1e-3],
  ['1E-3 Nm', 'torque', 1e-3],
  ['20 µN·m', 'torque', 2e-5],
  ['500 µm/s', 'velocity', 5e-4],
  ['45°', 'angle', Math.PI / 4],
  ['300 1/min', 'angularVelocity', 10 * Math.PI],
  ['20 µN·m·s²', 'momentOfInertia', 2e-5],
  ['0.89 mPa·s', 'viscosity', 8.9e-4],
]

test.for(written)('%s', ([text, dimension, value]) => {
  const parsed = parseQuantity(text, dimension)
  expect(parsed).toMatchObject({ ok: true })
  if (parsed.ok) expect(Math.abs(parsed.value / value - 1)).toBeLessThan(3e-16)
})

/** What is refused, a word that the sentence must hold and one that the mend must hold. */
const refused: readonly (readonly [text: string, dimension: Dimension, what: string, mend: string])[] = [
  ['5', 'force', 'no unit', '"5 N"'],
  ['5', 'angle', 'no unit', '"5 °"'],
  ['', 'force', 'does not begin with a number', '"5 N"'],
  ['five N', 'force', 'does not begin with a number', '"5 N"'],
  ['1,000 N', 'force', 'thousands or decimals', '"1000" or "1.000"'],
  ['1,234.5 N', 'force', 'more than one decimal mark', 'without thousands marks'],
  ['1.2.3 N', 'force', 'more than one decimal mark', 'one decimal point'],
  ['1e999 N', 'force', 'no finite number', '5 N'],
  ['1/0 in', 'length', 'no finite number', '5 mm'],
  ['NaN N', 'force', 'does not begin with a number', '5 N'],
  ['5 nm', 'torque', 'unit of length, not of torque', 'mN·m'],
  ['5 Nm', 'length', 'unit of torque, not of length', 'mm'],
  ['5 mN', 'torque', 'unit of force, not of torque', 'mN·m'],
  ['5 NM', 'torque', 'not known', 'Did you mean "N·m"?'],
  ['5 Mm/s', 'velocity', 'not known', 'Did you mean "mm/s"?'],
  ['5 1/s', 'angularVelocity', 'rad/s or rev/s', '"5 rad/s" or "5 rev/s"'],
  ['2.5', 'count', 'not a whole number', 'whole number'],
  ['-1', 'count', 'not a whole number', 'whole number'],
  ['3 N', 'count', 'unit of force, not of count', 'one of 1'],
  ['5 N N', 'force', 'not known', 'N'],
]

test.for(refused)('"%s" as %s is refused', ([text, dimension, what, mend]) => {
  const parsed = parseQuantity(text, dimension)
  expect(parsed).toMatchObject({ ok: false, what: expect.stringContaining(what), mend: expect.stringContaining(mend) })
})

const size = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -9, max: 6 }), fc.boolean())
  .map(([mantissa, power, negative]) => (negative ? -1 : 1) * mantissa * 10 ** power)

test('printExact and back gives the same double, in every dimension', () => {
  fc.assert(
    fc.property(size, fc.constantFrom(...dimensions), (value, dimension) => {
      const si = dimension === 'count' ? Math.floor(Math.abs(value)) : value
      const parsed = parseQuantity(printExact(si, dimension), dimension)
      expect(parsed).toMatchObject({ ok: true, value: si })
    }),
    { numRuns: 1000 },
  )
})

test('what a person writes with up to 5 digits is printed back within 5 digits of it, never longer', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99999 }), fc.integer({ min: 0, max: 4 }), (digits, decimals) => {
      const text = `${digits / 10 ** decimals} mm`
      const parsed = parseQuantity(text, 'length')
      if (!parsed.ok) throw new Error(parsed.what)
      expect(printExact(parsed.value, 'length').length).toBeLessThanOrEqual(text.length + 2)
      expect(parseQuantity(printQuantity(parsed.value, 'length', { digits: 5 }), 'length')).toMatchObject({
        ok: true,
        value: expect.closeTo(parsed.value, 12),
      })
    }),
  )
})

test('every unit that an error names is read as that dimension', () => {
  for (const dimension of dimensions) {
    for (const name of unitsFor(dimension)) {
      expect(
        unitsOf(name).map((unit) => unit.dimension),
        name,
      ).toContain(dimension)
      expect(parseQuantity(`1 ${name}`, dimension), name).toMatchObject({ ok: true })
    }
  }
})

test('no text crashes the reader', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), fc.constantFrom(...dimensions), (text, dimension) => {
      const parsed = parseQuantity(text, dimension)
      expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.mend !== '').toBe(true)
    }),
    { numRuns: 2000 },
  )
})

test('no text made of unit letters crashes the reader', () => {
  const piece = fc.constantFrom(
    '5',
    '1',
    ',',
    '.',
    ' ',
    'm',
    'N',
    'µ',
    's',
    '/',
    '·',
    '^',
    '-',
    '²',
    '(',
    ')',
    '[',
    ']',
    '°',
    'C',
    '%',
    'e',
    'min',
    '{',
    '}',
  )
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 14 }), fc.constantFrom(...dimensions), (pieces, dimension) => {
      const parsed = parseQuantity(pieces.join(''), dimension)
      expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.mend !== '').toBe(true)
    }),
    { numRuns: 5000 },
  )
})
