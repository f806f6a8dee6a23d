import { describe, expect, test } from 'vitest'
import {
  ballGrades,
  elasticNumbers,
  findMaterial,
  hardnessScales,
  heatNumbers,
  indentationHardness,
  type Material,
  materialFamilies,
  materials,
  rootMeanSquareRoughness,
  roughnessRatios,
  seenKinds,
} from '../../../../src/core/material/index.ts'
import { foldName } from '../../../../src/core/material/nameLikeness.ts'
import { good, near } from '../near.ts'

const valuesOf = (material: Material) =>
  [
    material.elasticModulus,
    material.poissonRatio,
    material.density,
    material.strength,
    material.conductivity,
    material.heatCapacity,
    ...material.hardness,
    ...material.finishes,
  ].filter((value) => value !== undefined)

test('at least 25 materials of every family but the users’ own', () => {
  expect(materials.length).toBeGreaterThanOrEqual(25)
  const families = new Set(materials.map(({ family }) => family))
  expect(materialFamilies.filter((family) => !families.has(family))).toEqual(['other'])
})

test('names are unique, and no synonym is the name of another', () => {
  const names = materials.map(({ name }) => foldName(name))
  expect(new Set(names).size).toBe(names.length)
  for (const { name, synonyms } of materials) {
    expect(synonyms.filter((word) => names.includes(foldName(word)) && foldName(word) !== foldName(name))).toEqual([])
  }
})

test.for(materials.map((material) => [material.name, material] as const))(
  '%s: values lie in their span, in SI, with source',
  ([, material]) => {
    for (const { low, value, high, source, seen } of valuesOf(material)) {
      expect(low).toBeLessThanOrEqual(value)
      expect(value).toBeLessThanOrEqual(high)
      expect(low).toBeGreaterThanOrEqual(0)
      expect(source).not.toBe('')
      expect(seenKinds).toContain(seen)
      expect(source.includes('from memory')).toBe(seen === 'memory')
    }
    for (const { scale } of material.hardness) expect(hardnessScales).toContain(scale)
    // A slip of a power of ten in a unit leaves these bounds (solids from cork to tungsten carbide).
    const inside = (value: number | undefined, low: number, high: number) => {
      expect(value).toBeGreaterThanOrEqual(low)
      expect(value).toBeLessThanOrEqual(high)
    }
    inside(material.elasticModulus.value, 5e5, 7e11)
    inside(material.poissonRatio.high, 0, 0.5)
    inside(material.density?.value, 100, 16_000)
    inside(material.conductivity?.value, 0.03, 420)
    inside(material.heatCapacity?.value, 200, 2500)
    for (const { high } of material.finishes) inside(high, 1e-9, 1e-4)
  },
)

test('heat per volume of dense solids is 1 to 4 MJ/(m³·K) (Ashby 2011, Materials Selection, from memory): a check across columns', () => {
  for (const material of materials) {
    const heat = heatNumbers(material)
    if (heat === undefined || foldName(material.name) === 'cork') continue
    const perVolume = heat.density * heat.heatCapacity
    expect(perVolume, material.name).toBeGreaterThan(1e6)
    expect(perVolume, material.name).toBeLessThan(4.1e6)
  }
})

describe('values written down from the sources a second time', () => {
  // Callister, appendix B: modulus in GPa, density in g/cm³, Poisson's ratio, strength in MPa; undefined where it has a span.
  test.for([
    ['316', 193, 8, undefined, 205],
    ['aluminium 6061-T6', 69, 2.7, undefined, 276],
    ['alumina', 380, undefined, undefined, undefined],
    ['silicon nitride', 304, undefined, undefined, undefined],
    ['zirconia 3Y', 205, undefined, undefined, undefined],
    ['soda-lime glass', 69, undefined, 0.22, 69],
    ['fused silica', 73, undefined, undefined, 104],
    ['PTFE', undefined, 2.17, 0.46, undefined],
    ['PMMA', undefined, 1.19, undefined, undefined],
    ['PP', undefined, 0.905, undefined, undefined],
    ['PE-HD', 1.08, undefined, undefined, undefined],
    ['PE-UHMW', 0.69, 0.94, undefined, undefined],
    ['PET', undefined, 1.35, undefined, 59.3],
    ['PC', 2.38, undefined, undefined, 62.1],
    ['PS', undefined, 1.05, 0.33, undefined],
    ['PVC', undefined, undefined, 0.38, undefined],
  ] as const)('%s', ([name, modulus, density, poisson, strength]) => {
    const material = good(findMaterial(name))
    if (modulus !== undefined) near(material.elasticModulus.value, modulus * 1e9, 1e-12)
    if (density !== undefined) near(material.density?.value ?? 0, density * 1e3, 1e-12)
    if (poisson !== undefined) near(material.poissonRatio.value, poisson, 1e-12)
    if (strength !== undefined) near(material.strength?.value ?? 0, strength * 1e6, 1e-12)
  })

  // Callister, table 19.1: conductivity in W/(m·K), specific heat in J/(kg·K).
  test.for([
    ['316', 15.9, 502],
    ['brass', 120, 375],
    ['copper', 398, 386],
    ['alumina', 39, 775],
    ['fused silica', 1.4, 740],
    ['soda-lime glass', undefined, 840],
    ['borosilicate', undefined, 850],
    ['PTFE', 0.25, 1050],
    ['PA66', 0.24, 1670],
    ['PP', undefined, 1925],
    ['PS', 0.13, 1170],
    ['PE-HD', undefined, 1850],
  ] as const)('%s: heat', ([name, conductivity, heatCapacity]) => {
    const material = good(findMaterial(name))
    if (conductivity !== undefined) near(material.conductivity?.value ?? 0, conductivity, 1e-12)
    near(material.heatCapacity?.value ?? 0, heatCapacity, 1e-12)
  })

  // Spans that must lie within ours: Callister B.2 and B.4, in GPa and MPa.
  test.for([
    ['PTFE', [0.4, 0.55], [13.8, 15.2]],
    ['PA66', [1.59, 3.79], [44.8, 82.8]],
    ['PMMA', [2.24, 3.24], [53.8, 73.1]],
    ['PP', [1.14, 1.55], [31, 37.2]],
    ['PVC', [2.41, 4.14], [40.7, 44.8]],
    ['PS', [2.28, 3.28], [35.9, 51.7]],
    ['silicon carbide', [207, 483], [96, 520]],
    ['alumina', [380, 380], [282, 551]],
    ['silicon nitride', [304, 304], [414, 1000]],
    ['zirconia', [205, 205], [800, 1500]],
  ] as const)('%s: spans', ([name, modulus, strength]) => {
    const material = good(findMaterial(name))
    expect(material.elasticModulus.low).toBeLessThanOrEqual(modulus[0] * 1e9 * (1 + 1e-12))
    expect(material.elasticModulus.high).toBeGreaterThanOrEqual(modulus[1] * 1e9 * (1 - 1e-12))
    expect(material.strength?.low).toBeLessThanOrEqual(strength[0] * 1e6 * (1 + 1e-12))
    expect(material.strength?.high).toBeGreaterThanOrEqual(strength[1] * 1e6 * (1 - 1e-12))
  })
})

describe('numbers for the laws', () => {
  const steel = good(findMaterial('100Cr6'))

  test('modulus and Poisson ratio, heat', () => {
    expect(elasticNumbers(steel)).toEqual({ elasticModulus: 203e9, poissonRatio: 0.29 })
    expect(heatNumbers(steel)).toEqual({ conductivity: 46.6, density: 7820, heatCapacity: 475 })
    expect(heatNumbers({ ...steel, density: undefined })).toBeUndefined()
  })

  test('HV 800 is 7.845 GPa (kgf/mm² by definition); Shore is no pressure; wood has N/mm²', () => {
    near(indentationHardness(steel)?.value ?? 0, 7.845e9, 1e-4)
    expect(indentationHardness(good(findMaterial('PTFE')))).toBeUndefined()
    expect(indentationHardness(good(findMaterial('beech across the grain')))?.value).toBe(34e6)
  })
})

describe('roughness', () => {
  test('Rq/Ra of a Gaussian and of a sine profile (exact; here by summing the profile)', () => {
    const ratio = (heights: readonly number[]) =>
      Math.sqrt(heights.reduce((sum, z) => sum + z * z, 0) / heights.length) /
      (heights.reduce((sum, z) => sum + Math.abs(z), 0) / heights.length)
    const turn = Array.from({ length: 100_000 }, (_, i) => Math.sin((2 * Math.PI * (i + 0.5)) / 100_000))
    near(roughnessRatios.sine, ratio(turn), 1e-8)
    near(roughnessRatios.sine, 1.110721, 1e-6)
    // Box–Muller on a lattice: all pairs of evenly spread chances.
    const even = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000)
    const bell = even.flatMap((u) =>
      even.slice(0, 100).map((_, k) => Math.sqrt(-2 * Math.log(u)) * Math.cos((2 * Math.PI * (k + 0.5)) / 100)),
    )
    near(roughnessRatios.gaussian, ratio(bell), 1e-3)
    near(roughnessRatios.gaussian, 1.253314, 1e-6)
  })

  test('Rq from Ra', () => {
    near(rootMeanSquareRoughness(20e-9), 25.06628e-9, 1e-6)
    near(rootMeanSquareRoughness(20e-9, 'sine'), 22.21441e-9, 1e-6)
    expect(() => rootMeanSquareRoughness(-1)).toThrow('roughness Ra must be zero or more')
  })

  test('ball grades of ISO 3290-1: largest Ra and deviation in µm, as two makers of balls print them', () => {
    expect(
      ballGrades.map(({ grade, arithmeticRoughness, deviation }) => [
        grade,
        Number((arithmeticRoughness * 1e6).toPrecision(6)),
        Number((deviation * 1e6).toPrecision(6)),
      ]),
    ).toEqual([
      ['G3', 0.01, 0.08],
      ['G5', 0.014, 0.13],
      ['G10', 0.02, 0.25],
      ['G16', 0.025, 0.4],
      ['G20', 0.032, 0.5],
      ['G24', 0.04, 0.6],
      ['G28', 0.05, 0.7],
      ['G40', 0.06, 1],
      ['G60', 0.08, 1.5],
      ['G100', 0.1, 2.5],
      ['G200', 0.15, 5],
    ])
  })
})
