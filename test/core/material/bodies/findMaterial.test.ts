import { describe, expect, test } from 'vitest'
import {
  findMaterial,
  materials,
  type OwnMaterial,
  ownValue,
  withOwnMaterials,
} from '../../../../src/core/material/index.ts'
import { good, problemsOf } from '../near.ts'

describe('lookup', () => {
  test.for([
    ['52100', '100Cr6'],
    ['1.3505', '100Cr6'],
    ['wälzlagerstahl', '100Cr6'],
    ['Waelzlagerstahl', '100Cr6'],
    ['1.4401', '316'],
    ['AISI-316', '316'],
    ['V4A', '316'],
    ['Messing', 'brass CuZn30'],
    ['Al2O3', 'alumina'],
    ['Hartmetall', 'tungsten carbide–cobalt'],
    ['tungsten carbide-cobalt', 'tungsten carbide–cobalt'],
    ['Polyamid 66', 'PA66'],
    ['Objektträger', 'soda-lime glass'],
    ['kork', 'cork'],
    ['Leder', 'leather'],
    ['pdms', 'PDMS 10:1'],
    ['Buche längs', 'beech along the grain'],
    ['Holzlack', 'lacquer film'],
  ] as const)('"%s" is %s', ([word, name]) => expect(good(findMaterial(word)).name).toBe(name))

  test('every name and every synonym leads to its material, alone or among a few', () => {
    for (const { name, synonyms } of materials) {
      expect(good(findMaterial(name)).name).toBe(name)
      for (const word of synonyms) {
        const found = findMaterial(word)
        expect(found.ok ? `"${found.value.name}"` : found.problems[0].what).toContain(`"${name}"`)
      }
    }
  })

  test('a name of several asks which', () => {
    expect(problemsOf(findMaterial('Edelstahl'))).toEqual([
      'materialAmbiguous: "Edelstahl" may mean "440C", "316", "304". Write one of "440C", "316", "304".',
    ])
  })

  test.for([
    ['nylonn', 'Did you mean "nylon"?'],
    ['silicon nitrite', '"silicon nitride"'],
    ['stainless', '"stainless steel"'],
    ['steel, stainless', '"stainless steel"'],
    ['100 Cr 7', '"100Cr6"'],
    ['xyzzy', 'Add it with its elastic modulus and Poisson ratio.'],
    ['', 'Add it with its elastic modulus and Poisson ratio.'],
  ] as const)('"%s" is unknown: %s', ([word, want]) => {
    const [problem] = problemsOf(findMaterial(word))
    expect(problem).toContain(`materialUnknown: No material is called "${word}".`)
    expect(problem).toContain(want)
  })
})

describe('own materials', () => {
  const shopSteel: OwnMaterial = {
    name: '316',
    elasticModulus: ownValue(196e9, 'certificate of the shop (invented)', { low: 194e9, high: 198e9 }),
  }
  const gel: OwnMaterial = {
    name: 'tongue gel (invented)',
    synonyms: ['gel', 'silicone'],
    elasticModulus: ownValue(50e3, 'indentation (invented)'),
    poissonRatio: ownValue(0.49, 'taken'),
  }

  test('overlay an entry property by property, without touching the table', () => {
    const table = good(withOwnMaterials([shopSteel]))
    const steel = good(findMaterial('1.4401', table))
    expect(steel.elasticModulus).toEqual({
      value: 196e9,
      low: 194e9,
      high: 198e9,
      source: 'certificate of the shop (invented)',
      seen: 'own',
    })
    expect(steel.poissonRatio).toEqual(good(findMaterial('316')).poissonRatio)
    expect(table).toHaveLength(materials.length)
    expect(good(findMaterial('316')).elasticModulus.value).toBe(193e9)
  })

  test('a new one stands beside and takes its synonyms', () => {
    const table = good(withOwnMaterials([gel]))
    expect(table).toHaveLength(materials.length + 1)
    expect(good(findMaterial('GEL', table)).elasticModulus.value).toBe(50e3)
    expect(good(findMaterial('silicone', table)).name).toBe('tongue gel (invented)')
    expect(good(findMaterial('PDMS', table)).name).toBe('PDMS 10:1')
    expect(good(findMaterial('gel', table))).toMatchObject({ family: 'other', hardness: [], finishes: [] })
  })

  test('a property left open does not wipe that of the table', () => {
    const table = good(withOwnMaterials([{ ...shopSteel, density: undefined }]))
    expect(good(findMaterial('316', table)).density).toEqual(good(findMaterial('316')).density)
  })

  test('all that is wrong with them comes at once', () => {
    const wrong = problemsOf(
      withOwnMaterials([
        { name: 'nothing known' },
        { ...gel, poissonRatio: ownValue(0.7, 'guess'), density: ownValue(1.1, 'in g/cm³') },
        { ...gel, name: 'twisted', elasticModulus: ownValue(5e4, 'x', { low: 6e4, high: 4e4 }) },
        {
          ...gel,
          name: 'hole',
          conductivity: ownValue(Number.NaN, 'x'),
          hardness: [{ scale: 'HV', ...ownValue(-1, 'x') }],
        },
      ]),
    )
    expect(wrong).toEqual([
      'materialIncomplete: "nothing known" is in no table and has no elastic modulus or no Poisson ratio. Give both.',
      'materialValueImpossible: The Poisson ratio of "tongue gel (invented)" is 0.7. Give a value of -0.99 to 0.5, between its own low and high end.',
      'materialValueImpossible: The density of "tongue gel (invented)" is 1.1 kg/m³. Give a value of 5 to 25000 kg/m³, between its own low and high end.',
      'materialValueImpossible: The elastic modulus of "twisted" is 50000 between 60000 and 40000 Pa. Give a value of 1 to 2000000000000 Pa, between its own low and high end.',
      'materialValueImpossible: The thermal conductivity of "hole" is NaN between NaN and NaN W/(m·K). Give a value of 0.0001 to 5000 W/(m·K), between its own low and high end.',
      'materialValueImpossible: The hardness HV of "hole" is -1. Give a value of 0 to 20000, between its own low and high end.',
    ])
  })
})
