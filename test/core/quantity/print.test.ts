import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Dimension, printMeasured, printQuantity, printWithUncertainty } from '../../../src/core/quantity/index.ts'

const readable: readonly (readonly [value: number, dimension: Dimension, text: string])[] = [
  [0.00635, 'length', '6.35 mm'],
  [1e-6, 'length', '1 µm'],
  [298.15, 'temperature', '25 °C'],
  [2, 'temperatureDifference', '2 K'],
  [0.005, 'ratio', '0.5 %'],
  [1.2, 'ratio', '1.2'],
  [2e-5, 'torque', '20 µN·m'],
  [0.2, 'torque', '200 mN·m'],
  [Math.PI / 4, 'angle', '45°'],
  [2e-5, 'momentOfInertia', '20 µN·m·s²'],
  [0, 'force', '0 N'],
  [-5.00004, 'force', '-5 N'],
  [8.9e-4, 'viscosity', '0.89 mPa·s'],
  [210e9, 'pressure', '210 GPa'],
  [3, 'count', '3'],
]

test.for(readable)('%d as %s', ([value, dimension, text]) => {
  expect(printQuantity(value, dimension)).toBe(text)
})

test('another unit on demand, and a foreign one is our mistake', () => {
  expect(printQuantity(0.00635, 'length', { unit: 'in' })).toBe('0.25 in')
  expect(() => printQuantity(1, 'length', { unit: 'N' })).toThrow('N is no unit of length')
  expect(() => printQuantity(Number.NaN, 'length')).toThrow(RangeError)
})

describe('value with uncertainty', () => {
  // JCGM 100:2008, 7.2.6: two significant digits of uncertainty decide those of the value.
  test.for([
    [12.34, 0.0533, '12.340 ± 0.053'],
    [100.02147, 0.00035, '100.02147 ± 0.00035'], // the mass m_S of JCGM 100:2008, 7.2.2
    [10.05762, 0.027, '10.058 ± 0.027'], // JCGM 100:2008, 7.2.6 prints 10.058 Ω for u = 27 mΩ
    [12345, 123, '12350 ± 120'],
    [0.05, 0.0999, '0.05 ± 0.10'],
    [0.2499, 0.00996, '0.250 ± 0.010'],
    [1, 0, '1 ± 0'],
    [-0.001, 0.5, '0.00 ± 0.50'],
    [1.5e-7, 1.23e-9, '(1.500 ± 0.012)e-7'],
    [2e8, 3e5, '(2.0000 ± 0.0030)e8'],
  ] as const)('%d ± %d', ([value, uncertainty, text]) => {
    expect(printWithUncertainty(value, uncertainty)).toBe(text)
  })

  test('with a unit', () => {
    expect(printMeasured(0.005034, 1.2e-5, 'torque')).toBe('(5.034 ± 0.012) mN·m')
    expect(printMeasured(298.15, 0.5, 'temperature')).toBe('(25.00 ± 0.50) °C')
  })

  test('what cannot be printed is our mistake', () => {
    expect(() => printWithUncertainty(Number.NaN, 1)).toThrow(RangeError)
    expect(() => printWithUncertainty(1, Number.NaN)).toThrow(RangeError)
    expect(() => printWithUncertainty(1, -1)).toThrow(RangeError)
  })

  test('rounding moves value and uncertainty by at most half of the last digit shown', () => {
    const size = fc
      .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -12, max: 12 }))
      .map(([mantissa, power]) => mantissa * 10 ** power)
    fc.assert(
      fc.property(size, size, fc.boolean(), (value, uncertainty, negative) => {
        fc.pre(value / uncertainty < 1e10)
        const signed = negative ? -value : value
        const match = /^\(?(-?[\d.]+) ± ([\d.]+)\)?(?:e(-?\d+))?$/.exec(printWithUncertainty(signed, uncertainty))
        if (match === null) throw new Error(printWithUncertainty(signed, uncertainty))
        const power = 10 ** Number(match[3] ?? 0)
        expect(Math.abs(Number(match[2]) * power - uncertainty)).toBeLessThanOrEqual(0.0501 * uncertainty)
        expect(Math.abs(Number(match[1]) * power - signed)).toBeLessThanOrEqual(0.0501 * uncertainty + 1e-14 * value)
      }),
      { numRuns: 1000 },
    )
  })
})
