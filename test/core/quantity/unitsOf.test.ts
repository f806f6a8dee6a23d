import { describe, expect, test } from 'vitest'
import { type Dimension, unitsOf } from '../../../src/core/quantity/index.ts'

const g = 9.80665
const turn = 2 * Math.PI
const si = 'SI Brochure 9th ed. (2019)'
const exact = 'exact by definition: international yard and pound 1959, g_n 3rd CGPM 1901'

/** Units as they stand in headings of real tables, and what they are in SI. */
const headings: readonly (readonly [text: string, dimension: Dimension, factor: number, source: string])[] = [
  ['s', 'time', 1, si],
  ['[s]', 'time', 1, si],
  ['sec.', 'time', 1, si],
  ['Sek', 'time', 1, si],
  ['ms', 'time', 1e-3, si],
  ['min', 'time', 60, si],
  ['h', 'time', 3600, si],
  ['N·m', 'torque', 1, si],
  ['N.m', 'torque', 1, si],
  ['N*m', 'torque', 1, si],
  ['N m', 'torque', 1, si],
  ['N-m', 'torque', 1, si],
  ['N⋅m', 'torque', 1, si],
  ['Nm', 'torque', 1, si],
  ['mNm', 'torque', 1e-3, si],
  ['mN.m', 'torque', 1e-3, si],
  ['[µNm]', 'torque', 1e-6, si],
  ['μN·m', 'torque', 1e-6, si],
  ['uN.m', 'torque', 1e-6, si],
  ['nN·m', 'torque', 1e-9, si],
  ['N·cm', 'torque', 1e-2, si],
  ['Ncm', 'torque', 1e-2, si],
  ['N·mm', 'torque', 1e-3, si],
  ['kgf·cm', 'torque', g / 100, exact],
  ['gf·cm', 'torque', g / 1e5, exact],
  ['lbf·in', 'torque', 0.45359237 * g * 0.0254, exact],
  ['N', 'force', 1, si],
  ['mN', 'force', 1e-3, si],
  ['MN', 'force', 1e6, si],
  ['kN', 'force', 1e3, si],
  ['(gf)', 'force', g / 1000, exact],
  ['kgf', 'force', g, exact],
  ['kp', 'force', g, exact],
  ['lbf', 'force', 4.4482216152605, exact],
  ['rad/s', 'angularVelocity', 1, si],
  ['rad s-1', 'angularVelocity', 1, si],
  ['rad·s⁻¹', 'angularVelocity', 1, si],
  ['rads-1', 'angularVelocity', 1, si],
  ['deg/s', 'angularVelocity', Math.PI / 180, si],
  ['°/s', 'angularVelocity', Math.PI / 180, si],
  ['rpm', 'angularVelocity', turn / 60, si],
  ['RPM', 'angularVelocity', turn / 60, si],
  ['1/min', 'angularVelocity', turn / 60, si],
  ['/min', 'angularVelocity', turn / 60, si],
  ['1 / min', 'angularVelocity', turn / 60, si],
  ['min⁻¹', 'angularVelocity', turn / 60, si],
  ['min^-1', 'angularVelocity', turn / 60, si],
  ['min^{-1}', 'angularVelocity', turn / 60, si],
  ['min−1', 'angularVelocity', turn / 60, si],
  ['U/min', 'angularVelocity', turn / 60, si],
  ['r/min', 'angularVelocity', turn / 60, si],
  ['Umdr./min', 'angularVelocity', turn / 60, si],
  ['Upm', 'angularVelocity', turn / 60, 'common practice, no source'],
  ['rev/s', 'angularVelocity', turn, si],
  ['1/s', 'angularVelocity', 1, 'common practice, no source'],
  ['1/s', 'frequency', 1, si],
  ['Hz', 'frequency', 1, si],
  ['kHz', 'frequency', 1e3, si],
  ['m', 'length', 1, si],
  ['mm', 'length', 1e-3, si],
  ['µm', 'length', 1e-6, si],
  ['um', 'length', 1e-6, si],
  ['nm', 'length', 1e-9, si],
  ['cm', 'length', 1e-2, si],
  ['inch', 'length', 0.0254, exact],
  ['rad', 'angle', 1, si],
  ['mrad', 'angle', 1e-3, si],
  ['µrad', 'angle', 1e-6, si],
  ['deg', 'angle', Math.PI / 180, si],
  ['°', 'angle', Math.PI / 180, si],
  ['turn', 'angle', turn, si],
  ['rev', 'angle', turn, si],
  ['m/s', 'velocity', 1, si],
  ['m·s^-1', 'velocity', 1, si],
  ['mm/s', 'velocity', 1e-3, si],
  ['mm s⁻¹', 'velocity', 1e-3, si],
  ['µm/s', 'velocity', 1e-6, si],
  ['%', 'ratio', 1e-2, si],
  ['‰', 'ratio', 1e-3, si],
  ['ppm', 'ratio', 1e-6, si],
  ['1', 'ratio', 1, si],
  ['[-]', 'ratio', 1, 'common practice, no source'],
  ['Pa', 'pressure', 1, si],
  ['kPa', 'pressure', 1e3, si],
  ['MPa', 'pressure', 1e6, si],
  ['N/mm²', 'pressure', 1e6, si],
  ['GPa', 'pressure', 1e9, si],
  ['bar', 'pressure', 1e5, si],
  ['Pa·s', 'viscosity', 1, si],
  ['Pas', 'viscosity', 1, si],
  ['mPa.s', 'viscosity', 1e-3, si],
  ['kg/(m·s)', 'viscosity', 1, si],
  ['cP', 'viscosity', 1e-3, 'SI Brochure 8th ed. (2006), table 9: 1 P = 0.1 Pa s'],
  ['mm²/s', 'kinematicViscosity', 1e-6, si],
  ['cSt', 'kinematicViscosity', 1e-6, 'SI Brochure 8th ed. (2006), table 9: 1 St = 1e-4 m2/s'],
  ['kg·m²', 'momentOfInertia', 1, si],
  ['kg m^2', 'momentOfInertia', 1, si],
  ['kgm2', 'momentOfInertia', 1, si],
  ['g·cm²', 'momentOfInertia', 1e-7, si],
  ['N·m·s²', 'momentOfInertia', 1, si],
  ['µN·m·s²', 'momentOfInertia', 1e-6, si],
  ['µNms²', 'momentOfInertia', 1e-6, si],
  ['N·m/rad', 'torsionalStiffness', 1, si],
  ['Nm/rad', 'torsionalStiffness', 1, si],
  ['mN·m/mrad', 'torsionalStiffness', 1, si],
]

test.for(headings)('%s is a %s', ([text, dimension, factor]) => {
  const unit = unitsOf(text).find((reading) => reading.dimension === dimension)
  expect(unit?.offset).toBe(0)
  expect(Math.abs((unit?.factor ?? Number.NaN) / factor - 1)).toBeLessThan(4e-16)
})

describe('temperatures', () => {
  // SI Brochure 9th ed., 2.3.1: t/°C = T/K - 273.15; t/°F = 1.8 t/°C + 32 (NIST SP 811, B.8).
  test.for(['°C', 'degC', 'deg. C', 'ºC', '℃', 'C', '[° C]'])('%s: point first, difference apart', (text) => {
    expect(unitsOf(text)).toEqual([
      { text: '°C', dimension: 'temperature', factor: 1, offset: 273.15 },
      { text: '°C', dimension: 'temperatureDifference', factor: 1, offset: 0 },
    ])
  })
  test('K has no offset', () => {
    expect(unitsOf('K').map((unit) => [unit.dimension, unit.offset])).toEqual([
      ['temperature', 0],
      ['temperatureDifference', 0],
    ])
  })
  test('212 °F is the boiling point, 373.15 K', () => {
    const [point] = unitsOf('°F')
    expect(212 * point.factor + point.offset).toBeCloseTo(373.15, 10)
  })
})

describe('what is ambiguous has several readings, what is unknown none', () => {
  test('Nm is a torque, nm a length, mN a force, m·N a torque', () => {
    expect(['Nm', 'nm', 'mN', 'm·N'].map((text) => unitsOf(text).map((unit) => unit.dimension))).toEqual([
      ['torque'],
      ['length'],
      ['force'],
      ['torque'],
    ])
  })
  test('1/s is rad/s, a frequency or turns per second', () => {
    expect(unitsOf('1/s').map((unit) => [unit.text, unit.dimension])).toEqual([
      ['rad/s', 'angularVelocity'],
      ['1/s', 'frequency'],
      ['rev/s', 'angularVelocity'],
    ])
  })
  test('1/min is turns per minute first, then a frequency', () => {
    expect(unitsOf('1/min').map((unit) => unit.dimension)).toEqual(['angularVelocity', 'frequency'])
  })
  test('ms-1 is m/s first, then 1/ms', () => {
    expect(unitsOf('ms-1').map((unit) => unit.text)).toEqual(['m/s', '1/ms'])
  })
  test.for([
    '',
    ' ',
    'W',
    'furlong',
    'kg/m·s',
    'm/',
    '/',
    '(',
    ')',
    '((',
    '[[s',
    'm2m',
    '5',
    'U',
    'r',
    's-',
    '^',
    'J',
    '10 N',
    'mmin',
  ])('"%s" is no unit', (text) => {
    expect(unitsOf(text)).toEqual([])
  })
})

test('every spelling of one unit prints as one text', () => {
  const spellings = [
    'mN·m',
    'mN.m',
    'mN m',
    'mNm',
    'mN*m',
    'mN-m',
    '[mN·m]',
    '(mN m)',
    ' mN⋅m ',
    'mN\u00a0m',
    'mN\u2009m',
    'm\u200bNm',
  ]
  expect(new Set(spellings.map((text) => unitsOf(text)[0]?.text))).toEqual(new Set(['mN·m']))
})
