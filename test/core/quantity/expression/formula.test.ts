import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compileExpression } from '../../../../src/core/quantity/expression/compileExpression.ts'
import { parseExpression } from '../../../../src/core/quantity/expression/parseExpression.ts'
import { formulaIn, readAnyQuantity, sameUnits } from '../../../../src/core/quantity/index.ts'

const value = (text: string, given: Readonly<Record<string, number>> = {}): number => {
  const parsed = parseExpression(text, Object.keys(given))
  if (!parsed.ok) throw new Error(`${parsed.fault.at}: ${parsed.fault.what}`)
  return compileExpression(parsed.root)(Object.values(given))
}

const fault = (text: string, ...names: string[]) => {
  const parsed = parseExpression(text, names)
  return parsed.ok ? undefined : parsed.fault
}

describe('order of operations, as on paper', () => {
  test.for([
    ['1 + 2 * 3', 7],
    ['(1 + 2) * 3', 9],
    ['-2^2', -4],
    ['(-2)^2', 4],
    ['2^3^2', 512],
    ['2**-1', 0.5],
    ['8 / 4 / 2', 1],
    ['8 - 4 - 2', 2],
    ['-3 - -4', 1],
    ['2·3 × 4', 24],
    ['5 − 3²', -4],
    ['1.5e3 + .5', 1500.5],
    ['sqrt(16) + abs(-2) + min(3, 1, 2) + max(1, 2)', 9],
    ['ln(exp(2)) + log10(1000)', 5],
    ['sin(pi/6) + cos(0) + tan(π/4)', 2.5],
  ] as const)('%s = %d', ([text, want]) => {
    expect(value(text)).toBeCloseTo(want, 12)
  })

  test('quantities by their names, Greek ones and indices too', () => {
    expect(value('M_0/(c*r*F₁) + µ', { M_0: 6, c: 1, r: 2, 'F₁': 3, μ: 1 })).toBe(2)
  })
})

describe('what is wrong, where, and what would mend it', () => {
  test.for([
    ['1 +', 4, 'ends where a value is due'],
    ['(1 + 2', 1, 'never closed'],
    ['1)', 2, 'never opened'],
    ['2 M', 3, 'Nothing joins "M"'],
    ['T + 1', 1, 'No quantity is called "T"'],
    ['sine(M)', 1, 'No function is called "sine"'],
    ['min(1)', 1, 'min got 1 values'],
    ['M @ 2', 3, '"@" means nothing'],
    ['M; process', 2, '";" means nothing'],
    ['M["constructor"]', 2, '"[" means nothing'],
    ['constructor(M)', 1, 'No function is called'],
    ['toString', 1, 'No quantity is called'],
    ['__proto__', 1, '"_" means nothing'],
    [`${'('.repeat(200)}1`, 60, 'nested too deep'],
    ['1'.repeat(3000), 1, '3000 letters'],
  ] as const)('%s', ([text, at, what]) => {
    const found = fault(text, 'M', 'F')
    expect(found?.what).toContain(what)
    expect(Math.abs((found?.at ?? 0) - at)).toBeLessThanOrEqual(at === 60 ? 2 : 0)
    expect(found?.mend.length).toBeGreaterThan(5)
  })

  test('a near name is offered', () => {
    expect(fault('torque/forse', 'torque', 'force')?.mend).toBe('Did you mean force?')
  })
})

describe('units of a formula', () => {
  const quantities = [
    { name: 'M', exponents: [2, 1, -2, 0, 0] },
    { name: 'F', exponents: [1, 1, -2, 0, 0] },
    { name: 'r', exponents: [1, 0, 0, 0, 0] },
    { name: 'Ω', exponents: [0, 0, -1, 0, 1] },
    { name: 'η', exponents: [-1, 1, -1, 0, 0] },
  ] as const
  const unit = (text: string): string => {
    const read = formulaIn(text, quantities)
    return read.ok ? read.formula.unit : read.fault.what
  }

  test.for([
    ['M/(r*F)', '1'],
    ['Ω*r', 'm/s'],
    ['η*Ω/(F/r²)', '1'],
    ['sqrt(r^2 + r*r)', 'm'],
    ['F/r^2', 'Pa'],
    ['r^3/(F*r)', 'm·s²/kg'],
    ['r^(1/2)', 'm^0.5'],
    ['M + F', 'It adds kg·m²/s² and kg·m/s².'],
    ['exp(r)', 'exp takes plain numbers, not m.'],
    ['r^M', 'A power has the unit kg·m²/s².'],
    ['r^(F/F)', 'm is raised to a power that may vary.'],
    ['max(r, F)', 'max holds unlike units against each other.'],
  ] as const)('%s: %s', ([text, want]) => {
    expect(unit(text)).toBe(want.replace('kg·m²', 'm²·kg').replace('kg·m/', 'm·kg/'))
  })

  test('radians make no difference of unit', () => {
    const read = formulaIn('Ω', quantities)
    expect(read.ok && sameUnits(read.formula.exponents, [0, 0, -1, 0, 0])).toBe(true)
  })
})

test('any text gives a value or a fault, and never throws', () => {
  const letters = fc.string({ unit: fc.constantFrom(...'0123456789.+-*/^()e,πMr sqrt²'), maxLength: 40 })
  fc.assert(
    fc.property(letters, (text) => {
      const parsed = parseExpression(text, ['M', 'r'])
      if (parsed.ok) expect(typeof compileExpression(parsed.root)([1, 2])).toBe('number')
      else expect(parsed.fault.at).toBeGreaterThan(0)
    }),
  )
})

test('random sums and products agree with plain arithmetic', () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true })
  fc.assert(
    fc.property(number, number, number, (a, b, c) => {
      expect(value('a*b + c - a/(1 + b^2)', { a, b, c })).toBe(a * b + c - a / (1 + b ** 2))
    }),
  )
})

describe('quantities of any unit', () => {
  test.for([
    ['1.5 mN·m', 1.5e-3, [2, 1, -2, 0, 0]],
    ['2e-6 mm³/(N·m)', 2e-15, [1, -1, 2, 0, 0]],
    ['23 °C', 296.15, [0, 0, 0, 1, 0]],
    ['0.3 K', 0.3, [0, 0, 0, 1, 0]],
    ['0.5 %', 0.005, [0, 0, 0, 0, 0]],
    ['0.12', 0.12, [0, 0, 0, 0, 0]],
    ['20 1/GPa', 2e-8, [1, -1, 2, 0, 0]],
  ] as const)('%s is %d in SI', ([text, value, exponents]) => {
    const read = readAnyQuantity(text)
    expect(read).toMatchObject({ ok: true, unit: { exponents: [...exponents] } })
    expect(read.ok ? read.value / value : 0).toBeCloseTo(1, 12)
  })

  test.for([
    ['100 1/min', 'rpm'],
    ['3 foot-candles', 'not known'],
    ['N', 'does not begin with a number'],
  ] as const)('%s is refused: %s', ([text, words]) => {
    const read = readAnyQuantity(text)
    expect(read.ok ? '' : `${read.what} ${read.mend}`).toContain(words)
  })
})
