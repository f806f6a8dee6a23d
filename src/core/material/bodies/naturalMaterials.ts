import { known } from '../knownValue.ts'
import { corkSheets, leatherSheets, memory, woodAtlas, woodScience } from '../sources.ts'
import { planed, sanded } from './finishes.ts'
import type { Material } from './material.ts'
import { finish, gigapascal, hardness, megapascal, strength } from './valueUnits.ts'

const anisotropic = 'Differs with direction, so laws for equal directions give orders of size only.'

/** Wood, cork and leather, at about 65 % humidity (wood 12 % moisture). */
export const naturalMaterials: readonly Material[] = [
  {
    name: 'beech across the grain',
    synonyms: ['beech', 'Buche', 'Buche quer', 'Rotbuche', 'beech wood', 'Buchenholz', 'Fagus sylvatica'],
    family: 'natural',
    elasticModulus: gigapascal([0.774, 1.86, 2.2], woodScience),
    poissonRatio: known([0.04, 0.37, 0.5], woodScience),
    density: known([640, 690, 740], woodAtlas),
    hardness: [hardness('Brinell N/mm²', [27, 34, 40], memory)],
    strength: strength('compressive', [4.49, 4.49, 11], woodScience),
    conductivity: known([0.14, 0.16, 0.18], memory),
    heatCapacity: known([1400, 1600, 1900], memory),
    finishes: [planed, sanded],
    note: `Loaded along the radius of the trunk; along its rings 0.77 GPa and 9.8 MPa. ${anisotropic}`,
  },
  {
    name: 'beech along the grain',
    synonyms: [
      'beech',
      'Buche',
      'Buche längs',
      'Rotbuche',
      'beech end grain',
      'Buche Hirnholz',
      'beech wood',
      'Buchenholz',
    ],
    family: 'natural',
    elasticModulus: gigapascal([11, 12.2, 16], woodScience),
    poissonRatio: known([0.3, 0.5, 0.5], woodScience),
    density: known([640, 690, 740], woodAtlas),
    hardness: [hardness('Brinell N/mm²', [55, 72, 85], memory)],
    strength: strength('compressive', [40, 42.5, 60], woodScience),
    conductivity: known([0.28, 0.32, 0.4], memory),
    heatCapacity: known([1400, 1600, 1900], memory),
    finishes: [sanded],
    note: `Loaded on the end grain. Its two ratios are 0.50 and 0.71. ${anisotropic}`,
  },
  {
    name: 'cork',
    synonyms: ['Kork', 'natural cork', 'Naturkork', 'Quercus suber'],
    family: 'natural',
    elasticModulus: megapascal([9, 25, 50], corkSheets),
    poissonRatio: known([0, 0.1, 0.4], corkSheets),
    density: known([120, 170, 240], corkSheets),
    hardness: [],
    strength: strength('compressive', [0.7, 1.1, 2.2], corkSheets),
    conductivity: known([0.04, 0.045, 0.05], corkSheets),
    heatCapacity: known([1900, 2000, 2100], corkSheets),
    finishes: [finish('cut', [10, 30, 80], memory)],
    note: 'A foam: its cells buckle above about 1 MPa. Softer when damp.',
  },
  {
    name: 'leather',
    synonyms: ['Leder', 'cow leather', 'Rindsleder', 'vegetable tanned leather'],
    family: 'natural',
    elasticModulus: megapascal([10, 50, 200], memory),
    poissonRatio: known([0.2, 0.4, 0.5], memory),
    density: known([750, 900, 1050], memory),
    hardness: [hardness('Shore A', [60, 80, 95], memory)],
    strength: strength('tensile', [8, 15, 25], leatherSheets),
    conductivity: known([0.12, 0.15, 0.18], memory),
    heatCapacity: known([1400, 1500, 1700], memory),
    finishes: [finish('grain side', [2, 8, 25], memory)],
    note: `Tension; softer when pressed. ${anisotropic}`,
  },
]
