import { describe, expect, test } from 'vitest'
import { centralRegimeFilms, filmRegimes, largestRegime, regimeFilms } from '../../../src/core/film/index.ts'
import { near } from './near.ts'

describe('Ĥ of the four regimes for a ball on a plane (Hamrock, Schmid & Jacobson 2004, from memory; computed independently)', () => {
  test.for([
    [1e9, 1e8, ['140.112', '12692.7', '750525', '993598'], 'piezoviscousElastic'],
    [10, 1e6, ['140.112', '12.693', '34305.6', '54.602'], 'isoviscousElastic'],
    [1e5, 0.1, ['140.112', '401.378', '0.70043', '321.522'], 'piezoviscousRigid'],
    [1, 1, ['140.112', '5.3525', '3.2762', '1.6874'], 'isoviscousRigid'],
  ] as const)('gV %d, gE %d: rigid, thickened, soft and hard %o', ([viscosity, elasticity, wants, regime]) => {
    const films = regimeFilms({ viscosity, elasticity })
    for (const [i, name] of filmRegimes.entries()) {
      const lastDigit = 10 ** -(wants[i].split('.')[1]?.length ?? 0)
      const want = Number(wants[i])
      expect(Math.abs(films[name] - want)).toBeLessThanOrEqual(Math.max(1e-5 * want, lastDigit / 2))
    }
    expect(largestRegime(films)).toBe(regime)
  })

  test('central films of elastic bodies', () => {
    const films = centralRegimeFilms({ viscosity: 1e9, elasticity: 1e8 })
    near(films.isoviscousElastic, 1164349, 1e-5)
    near(films.piezoviscousElastic, 1645636, 1e-5)
  })

  test('central films must not choose: (1e5, 0.1) would change its regime at 844', () => {
    const films = centralRegimeFilms({ viscosity: 1e5, elasticity: 0.1 })
    expect(films.piezoviscousElastic.toFixed(0)).toBe('844')
    expect(largestRegime(films)).toBe('piezoviscousElastic')
  })
})

test('a rigid line-like contact is thicker by more than its ratio of radii', () => {
  expect(regimeFilms({ viscosity: 1, elasticity: 1 }, 4).isoviscousRigid).toBeGreaterThan(4 * 140.112)
})

test('impossible numbers are refused', () => {
  expect(() => regimeFilms({ viscosity: -1, elasticity: 1 })).toThrow(/gV/)
  expect(() => regimeFilms({ viscosity: 1, elasticity: Number.NaN })).toThrow(/gE/)
  expect(() => regimeFilms({ viscosity: 1, elasticity: 1 }, 0)).toThrow(/radius ratio/)
})
