import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  findLiquid,
  liquidFrom,
  viscosityGrade,
  viscosityGrades,
  waltherLine,
  waltherTemperature,
  waltherViscosity,
} from '../../../../src/core/material/index.ts'
import { good, near, problemsOf, zero } from '../near.ts'

const point = (celsius: number, viscosity: number, from = zero) => ({
  temperature: from + celsius,
  viscosity: viscosity * 1e-6,
})

describe('Walther, ASTM D341', () => {
  const thin = waltherLine(point(40, 32), point(100, 5.4))

  test('(40 °C, 32), (100 °C, 5.4 mm²/s), worked out apart', () => {
    near(thin.intercept, 9.530815, 1e-6)
    near(thin.slope, 3.746578, 1e-6)
    for (const [celsius, want] of [
      [0, 335.9996],
      [20, 86.2779],
      [25, 65.4201],
      [60, 15.18589],
      [80, 8.533215],
      [120, 3.723861],
    ] as const) {
      near(1e6 * waltherViscosity(thin, zero + celsius), want, 1e-6)
    }
  })

  test('a worked sheet with 273 instead of 273.15: A 9.5259, B 3.7449, 8.5 mm²/s at 80 °C', () => {
    const sheet = waltherLine(point(40, 32, 273), point(100, 5.4, 273))
    expect(sheet.intercept.toFixed(4)).toBe('9.5259')
    expect(sheet.slope.toFixed(4)).toBe('3.7449')
    expect((1e6 * waltherViscosity(sheet, 353)).toFixed(1)).toBe('8.5')
  })

  test('(40 °C, 100), (100 °C, 11.1 mm²/s), worked out apart', () => {
    const thick = waltherLine(point(100, 11.1), point(40, 100))
    near(thick.intercept, 9.203413, 1e-6)
    near(thick.slope, 3.56675, 1e-6)
    near(1e6 * waltherViscosity(thick, zero + 60), 39.67869, 1e-6)
  })

  test('measured oils, dynamic at 30, 60, 100 °C (Stachowiak & Batchelor, Engineering Tribology, table 2.3): the middle one from the ends', () => {
    // mPa·s; the table has no densities, and their fall with warmth is that of any oil.
    const oils = [
      [38, 12.1, 5.3],
      [153, 34, 9.1],
      [250, 50.5, 12.6],
      [810, 135, 26.8],
      [18.6, 6.3, 2.4],
      [45, 12, 3.9],
      [107, 23.3, 6.4],
      [122, 26.3, 7.3],
      [171, 31, 7.5],
      [30.7, 8.6, 3.1],
      [165, 30, 6.8],
      [310, 44.2, 9.4],
      [2000, 180, 24],
    ] as const
    const density = (celsius: number) => 880 * (1 - 7e-4 * (celsius - 15))
    const off = oils.map(([cold, middle, hot]) => {
      const line = waltherLine(point(30, (1e3 * cold) / density(30)), point(100, (1e3 * hot) / density(100)))
      return Math.abs((waltherViscosity(line, zero + 60) * density(60) * 1e3) / middle - 1)
    })
    // The first row does not lie on any line with the others; it is 12 % off.
    expect(off.filter((share) => share < 0.06)).toHaveLength(oils.length - 1)
    expect([...off].sort((a, b) => a - b)[6]).toBeLessThan(0.02)
  })

  const oils = fc.tuple(fc.double({ min: 0.5, max: 1e4, noNaN: true }), fc.double({ min: 1.05, max: 100, noNaN: true }))

  test('there and back', () => {
    fc.assert(
      fc.property(oils, fc.double({ min: 260, max: 400, noNaN: true }), ([hot, ratio], temperature) => {
        const line = waltherLine(point(40, hot * ratio), point(100, hot))
        near(1e6 * waltherViscosity(line, zero + 40), hot * ratio, 1e-9)
        near(1e6 * waltherViscosity(line, zero + 100), hot, 1e-9)
        const viscosity = waltherViscosity(line, temperature)
        fc.pre(viscosity > 0.31e-6 && viscosity < 1e6)
        near(waltherTemperature(line, viscosity), temperature, 1e-9)
        expect(waltherViscosity(line, temperature + 1)).toBeLessThan(viscosity)
      }),
    )
  })

  test('refuses what is no oil', () => {
    expect(() => waltherLine(point(40, 5), point(100, 6))).toThrow('must fall with temperature')
    expect(() => waltherLine(point(40, 5), point(40, 5))).toThrow('must fall with temperature')
    expect(() => waltherLine(point(40, 5), point(100, 0.2))).toThrow('stay above 0.3e-6')
    expect(() => waltherLine(point(40, Number.NaN), point(100, 1))).toThrow('got NaN')
    expect(() => waltherViscosity(thin, -1)).toThrow('temperature must be more than zero')
    expect(() => waltherViscosity(thin, 50)).toThrow('kinematic viscosity at 50 K')
    expect(() => waltherTemperature(thin, 0)).toThrow('must be more than 0.3e-6')
  })
})

describe('ISO 3448', () => {
  test('20 grades, each 10 % to either side of its middle', () => {
    expect(viscosityGrades.map(({ grade }) => grade)).toEqual([
      2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
    ])
  })

  test.for([
    [2, 2.2, 1.98, 2.42],
    [3, 3.2, 2.88, 3.52],
    [5, 4.6, 4.14, 5.06],
    [7, 6.8, 6.12, 7.48],
    [22, 22, 19.8, 24.2],
    [32, 32, 28.8, 35.2],
    [46, 46, 41.4, 50.6],
    [68, 68, 61.2, 74.8],
    [100, 100, 90, 110],
    [1500, 1500, 1350, 1650],
  ] as const)('VG %d: %d (%d to %d) mm²/s', ([grade, middle, low, high]) => {
    const found = viscosityGrade(middle * 1e-6)
    expect(found?.grade).toBe(grade)
    near(1e6 * (found?.middle ?? 0), middle, 1e-12)
    expect(viscosityGrade(low * 1e-6)?.grade).toBe(grade)
    expect(viscosityGrade(high * 1e-6)?.grade).toBe(grade)
    expect(viscosityGrade(low * 0.999e-6)?.grade).not.toBe(grade)
    expect(viscosityGrade(high * 1.001e-6)?.grade).not.toBe(grade)
  })

  test('37 mm²/s is no grade', () => expect(viscosityGrade(37e-6)).toBeUndefined())
})

describe('oils as liquids', () => {
  test('ISO VG 32: grade at 40 °C times density, 10 % as a rectangle, wider where it is cold', () => {
    const oil = good(findLiquid('ISO VG 32'))
    const at = (celsius: number) => good(oil.viscosity(zero + celsius))
    const density = good(oil.density(zero + 40)).density
    near(at(40).viscosity, 32e-6 * density, 1e-9)
    near((at(40).viscosityUncertainty ?? 0) / at(40).viscosity, 0.1 / Math.sqrt(3), 1e-6)
    const share = (celsius: number) => (at(celsius).viscosityUncertainty ?? 0) / at(celsius).viscosity
    expect(share(0)).toBeGreaterThan(share(40))
    expect(at(80).viscosity / good(oil.density(zero + 80)).density).toBeCloseTo(8.533215e-6, 11)
  })

  test('squalane has 28.2 mPa·s at 25 °C (Comuñas et al. 2013, J. Phys. Chem. Ref. Data 42:033101, from memory) within 2 %', () => {
    near(good(good(findLiquid('squalane')).viscosity(298.15)).viscosity, 28.2e-3, 0.02)
  })

  test('silicone oil: ratio of 99 to 38 °C near 0.40 (usual temperature coefficient 0.60, from memory), grade at 25 °C', () => {
    const oil = good(findLiquid('Silikonöl 100'))
    const kinematic = (celsius: number) =>
      good(oil.viscosity(zero + celsius)).viscosity / good(oil.density(zero + celsius)).density
    near(kinematic(25), 100e-6, 1e-12)
    near(kinematic(99) / kinematic(37.8), 0.4, 0.02)
    // A shop's example: 100 mm²/s and 0.964 g/cm³ make 96.4 mPa·s.
    near(good(oil.viscosity(298.15)).viscosity, 96.4e-3, 0.005)
  })

  test('a silicone oil sheared hard is doubted, a mineral oil at the same stress is not', () => {
    const doubts = (name: string, shearRate: number) =>
      good(good(findLiquid(name)).viscosity(298.15, { shearRate })).doubts.map(({ kind }) => kind)
    expect(doubts('silicone oil 1000', 1e5)).toEqual(['beyondLaw'])
    expect(doubts('ISO VG 1000', 1e5 / 3)).toEqual([])
  })

  test('an own oil from two kinematic viscosities', () => {
    const oil = good(
      liquidFrom({
        kind: 'oil',
        name: 'slide oil',
        source: 'sheet of the shop',
        points: [point(40, 100), point(100, 11.1)],
        density: 880,
      }),
    )
    near(good(oil.viscosity(zero + 60)).viscosity, 39.67869e-6 * 880 * (1 - 7e-4 * 20), 1e-6)
    expect(good(oil.viscosity(zero + 60)).viscosityUncertainty).toBeNull()
    expect(problemsOf(oil.viscosity(zero + 60, { pressure: 1e6 }))[0]).toContain(
      'Give its pressure–viscosity coefficient',
    )
  })
})
