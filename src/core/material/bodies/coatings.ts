import { known } from '../knownValue.ts'
import { memory } from '../sources.ts'
import type { Material } from './material.ts'
import { finish, gigapascal, hardness, strength } from './valueUnits.ts'

/** Films. Give the thickness with the pair: what lies below is soon felt. */
export const coatings: readonly Material[] = [
  {
    name: 'lacquer film',
    synonyms: [
      'lacquer',
      'varnish',
      'clear coat',
      'Lack',
      'Klarlack',
      'Holzlack',
      'polyurethane lacquer',
      'acrylic lacquer',
    ],
    family: 'coating',
    elasticModulus: gigapascal([0.5, 2, 4], memory),
    poissonRatio: known([0.33, 0.38, 0.42], memory),
    density: known([1050, 1200, 1400], memory),
    hardness: [hardness('HV', [5, 15, 25], memory)],
    strength: strength('yield', [20, 45, 80], memory),
    conductivity: known([0.15, 0.2, 0.3], memory),
    heatCapacity: known([1200, 1500, 1700], memory),
    finishes: [finish('sprayed', [0.05, 0.2, 1], memory), finish('brushed', [0.5, 1.5, 5], memory)],
    note: 'Cured and dry; goes on hardening for weeks and softens in damp air and warmth.',
  },
  {
    name: 'a-C:H film',
    synonyms: ['DLC', 'diamond-like carbon', 'amorphous carbon', 'a-C:H', 'diamantähnlicher Kohlenstoff'],
    family: 'coating',
    elasticModulus: gigapascal([100, 200, 300], memory),
    poissonRatio: known([0.2, 0.25, 0.3], memory),
    density: known([1700, 2100, 2600], memory),
    hardness: [hardness('HV', [1500, 2300, 3500], memory)],
    conductivity: known([0.3, 1, 3], memory),
    heatCapacity: known([600, 900, 1100], memory),
    finishes: [finish('on a polished base', [0.005, 0.02, 0.05], memory)],
    note: 'Usually 1 to 3 µm thick: the base carries the load.',
  },
]
