import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  findLiquid,
  type Liquid,
  type LiquidRecipe,
  liquidFrom,
  mineralOilGrades,
  namedLiquids,
} from '../../../../src/core/material/index.ts'
import { good, near, problemsOf, zero } from '../near.ts'

const oatDrink: Extract<LiquidRecipe, { kind: 'flowCurve' }> = {
  kind: 'flowCurve',
  name: 'oat drink (invented)',
  source: 'kitchen lab (invented)',
  law: 'cross',
  parameters: { restViscosity: 0.02, fastViscosity: 0.002, time: 0.1, exponent: 0.7 },
  temperature: 298.15,
  shearRate: { low: 1, high: 1000 },
  relativeUncertainty: 0.02,
  density: 1020,
}

const measured: Extract<LiquidRecipe, { kind: 'measured' }> = {
  kind: 'measured',
  name: 'slide wax, melted (invented)',
  source: 'workshop (invented)',
  points: [
    { temperature: 330, viscosity: 0.02, viscosityUncertainty: 0.001 },
    { temperature: 350, viscosity: 0.01, viscosityUncertainty: 0.0002 },
    { temperature: 370, viscosity: 0.006, viscosityUncertainty: 0.0001 },
  ],
  family: 'ester',
}

const slideOil: Extract<LiquidRecipe, { kind: 'oil' }> = {
  kind: 'oil',
  name: 'slide oil (invented)',
  source: 'workshop (invented)',
  points: [
    { temperature: zero + 40, viscosity: 68e-6 },
    { temperature: zero + 100, viscosity: 8.7e-6 },
  ],
  density: 880,
  relativeUncertainty: 0.01,
  pressureCoefficient: 19e-9,
}

const all: readonly Liquid[] = [
  ...namedLiquids.map(({ name }) => good(findLiquid(name))),
  good(findLiquid('glycerol 60 %')),
  good(findLiquid('glycerol 0 %')),
  ...[oatDrink, measured, slideOil].map((recipe) => good(liquidFrom(recipe))),
]

const anything = fc.oneof(
  fc.double({ min: -10, max: 1000, noNaN: true }),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -0),
)
const anyPressure = fc.oneof(fc.double({ min: -1e6, max: 2e9, noNaN: true }), fc.constantFrom(0, Number.NaN, undefined))
const anyRate = fc.oneof(
  fc.double({ min: -3, max: 9, noNaN: true }).map((power) => 10 ** power),
  fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, undefined),
)

describe.each(all)('$name', (liquid) => {
  test('answers with a number or refuses with its range, whatever it is asked', () => {
    fc.assert(
      fc.property(anything, anyRate, anyPressure, (temperature, shearRate, pressure) => {
        const viscosity = liquid.viscosity(temperature, { shearRate, pressure })
        const density = liquid.density(temperature)
        if (viscosity.ok) {
          expect(viscosity.value.viscosity).toBeGreaterThan(0)
          expect(viscosity.value.viscosity).toBeLessThan(Number.POSITIVE_INFINITY)
          expect(viscosity.value.viscosityUncertainty ?? 1).toBeGreaterThan(0)
        } else {
          for (const { kind, what, mend } of viscosity.problems) {
            expect(kind).toMatch(/^(temperature|shearRate|pressure)(OutsideTable|Missing)$/)
            expect(`${what} ${mend}`).toMatch(/\d|pressure of the air only/)
          }
        }
        if (density.ok) expect(density.value.density).toBeGreaterThan(600)
      }),
      { numRuns: 60 },
    )
  })

  test('thins with warmth all over its table', () => {
    const { low, high } = liquid.temperature
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.99, noNaN: true }), (share) => {
        const at = (part: number) => good(liquid.viscosity(low + part * (high - low), { shearRate: 10 })).viscosity
        if (liquid.shearRate === null) expect(at(share + 0.01)).toBeLessThan(at(share))
      }),
      { numRuns: 30 },
    )
  })

  test('says law, source and validity', () => {
    const { law, source, valid } = good(liquid.viscosity(liquid.temperature.low, { shearRate: 10 }))
    for (const words of [law, source, valid]) expect(words.length).toBeGreaterThan(4)
  })
})

describe('refusals', () => {
  const water = good(findLiquid('water'))
  test.for([
    [
      400,
      {},
      'temperatureOutsideTable: water is known from 273.15 K (0 °C) to 383.15 K (110 °C), not at 400 K (126.85 °C).',
    ],
    [
      Number.NaN,
      {},
      'temperatureOutsideTable: water is known from 273.15 K (0 °C) to 383.15 K (110 °C), not at what is no number.',
    ],
    [
      300,
      { pressure: 1e9 },
      'pressureOutsideTable: water is known at 0 to 99900000 Pa above that of the air, not at 1000000000 Pa',
    ],
    [300, { shearRate: -5 }, 'shearRateOutsideTable: water is known for shear rates of 0 1/s and more, not at -5 1/s.'],
  ] as const)('water at %d K %o', ([temperature, conditions, want]) => {
    expect(problemsOf(water.viscosity(temperature, conditions))[0]).toContain(want)
  })

  test('all that is wrong comes at once', () => {
    expect(problemsOf(water.viscosity(0, { pressure: -1, shearRate: Number.NaN }))).toHaveLength(3)
  })
})

describe('recipes that cannot be', () => {
  test.for<[string, LiquidRecipe, readonly string[]]>([
    ['too much glycerol', { kind: 'glycerolWater', massFraction: 1.2 }, ['massFraction is 1.2. Give 0 to 1.']],
    ['silicone grade in mm²/s', { kind: 'siliconeOil', grade: 100 }, ['grade is 100 m²/s. Give 0.00001 to 0.1 m²/s.']],
    [
      'unknown grade',
      { kind: 'mineralOil', grade: 37 },
      ['No usual mineral oil of grade 37 is known. Give one of 10, 15, 22'],
    ],
    [
      'oil that thickens',
      { ...slideOil, points: [slideOil.points[1], { ...slideOil.points[0], temperature: 500 }] },
      ['Viscosity must fall with temperature'],
    ],
    ['oil without a density', { ...slideOil, density: undefined }, ['The oil has no density. Give it.']],
    [
      'lead-heavy oil, α in 1/GPa',
      { ...slideOil, density: 0.88, pressureCoefficient: 19 },
      ['density is 0.88 kg/m³. Give 100 to 25000 kg/m³.', 'pressureCoefficient is 19 1/Pa.'],
    ],
    ['nothing measured', { ...measured, points: [] }, ['There is no viscosity.']],
    [
      'temperatures in °C, out of order',
      { ...measured, points: [measured.points[1], { ...measured.points[0], temperature: 60 }] },
      ['points[1].temperature is 60 K. Give 150 to 800 K.'],
    ],
    [
      'points out of order',
      { ...measured, points: [measured.points[1], measured.points[0]] },
      ['Temperatures must rise, but 330 K comes after 350 K.'],
    ],
    [
      'missing parameter',
      { ...oatDrink, parameters: { restViscosity: 1 } },
      ['fastViscosity must be 0', 'time must be', 'exponent must be 0'],
    ],
    ['rates backwards', { ...oatDrink, shearRate: { low: 100, high: 1 } }, ['shearRate runs from 100 to 1.']],
    ['no number', { ...oatDrink, temperature: Number.NaN }, ['temperature is NaN K.']],
  ])('%s', ([, recipe, wanted]) => {
    const seen = problemsOf(liquidFrom(recipe))
    expect(seen).toHaveLength(wanted.length)
    for (const [i, want] of wanted.entries()) expect(seen[i]).toContain(want)
  })
})

describe('own liquids', () => {
  test('measured viscosities are met, and between two of them Arrhenius holds', () => {
    const liquid = good(liquidFrom(measured))
    for (const { temperature, viscosity, viscosityUncertainty } of measured.points) {
      const seen = good(liquid.viscosity(temperature))
      near(seen.viscosity, viscosity, 1e-12)
      expect(seen.viscosityUncertainty).toBeGreaterThanOrEqual(viscosityUncertainty ?? 0)
    }
    const two = good(liquidFrom({ ...measured, points: measured.points.slice(0, 2) }))
    const middle = 2 / (1 / 330 + 1 / 350)
    near(good(two.viscosity(middle)).viscosity, Math.sqrt(0.02 * 0.01), 1e-12)
    near(good(two.viscosity(middle)).viscosityUncertainty ?? 0, 0.05 * Math.sqrt(0.02 * 0.01), 1e-12)
    expect(problemsOf(two.density(340))[0]).toContain('The density of slide wax, melted (invented) is not known.')
  })

  test('one viscosity is believed within 1 K, without an uncertainty where none was given', () => {
    const one = good(liquidFrom({ ...measured, points: [{ temperature: 298.15, viscosity: 0.003 }], density: 1010 }))
    expect(good(one.viscosity(299))).toMatchObject({ viscosity: expect.closeTo(0.003, 12), viscosityUncertainty: null })
    expect(one.viscosity(300).ok).toBe(false)
    expect(good(one.density(298.15)).density).toBe(1010)
  })

  test('a measured α goes before that of the kind', () => {
    const slide = good(liquidFrom(slideOil))
    expect(slide.pressureCoefficient).toMatchObject({ value: 19e-9, low: 19e-9, seen: 'own' })
    expect(
      good(liquidFrom({ ...slideOil, pressureCoefficient: undefined, family: 'ester' })).pressureCoefficient?.value,
    ).toBe(11e-9)
    expect(good(liquidFrom({ ...slideOil, pressureCoefficient: undefined })).pressure).toEqual({ low: 0, high: 0 })
  })

  test('an own liquid is found by its name, also where the table has one of that name', () => {
    const own = [{ name: 'Water', synonyms: ['tap'], recipe: { ...measured, name: 'tap water' } }]
    expect(good(findLiquid('tap', own)).name).toBe('tap water')
    expect(good(findLiquid('water', own)).name).toBe('tap water')
    expect(good(findLiquid('Wasser', own)).name).toBe('water')
  })
})

test.for([
  ['sqalane', '"squalane"'],
  ['iso vg46', undefined],
  ['Silikonoel 350', undefined],
  ['silicone oil 123,4 cSt', undefined],
  ['ISO VG 47', '"ISO VG 46"'],
  ['bicycle', 'Add it as a recipe'],
] as const)('"%s" is found or answered with %s', ([name, want]) => {
  const found = findLiquid(name)
  if (want === undefined) expect(found.ok).toBe(true)
  else expect(problemsOf(found)[0]).toContain(want)
})

test('each usual grade is listed once', () => {
  expect(new Set(mineralOilGrades).size).toBe(mineralOilGrades.length)
})
