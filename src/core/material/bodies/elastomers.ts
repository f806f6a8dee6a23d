import { known } from '../knownValue.ts'
import { callister, memory, polymerChart, siliconeLiterature } from '../sources.ts'
import { castOnGlass, moulded } from './finishes.ts'
import type { Material } from './material.ts'
import { hardness, megapascal, strength } from './valueUnits.ts'

/** Soft bodies. Their modulus hangs on cure, filler and speed: measure it where the film or the pressure is to be believed. */
export const elastomers: readonly Material[] = [
  {
    name: 'PDMS 10:1',
    synonyms: [
      'PDMS',
      'silicone',
      'silicone elastomer',
      'silicone rubber',
      'Silikon',
      'Silikonelastomer',
      'polydimethylsiloxane',
    ],
    family: 'elastomer',
    elasticModulus: megapascal([1.32, 2, 2.97], siliconeLiterature),
    poissonRatio: known([0.49, 0.495, 0.5], memory),
    density: known([965, 1000, 1030], memory),
    hardness: [hardness('Shore A', [44, 48, 54], siliconeLiterature)],
    strength: strength('tensile', [3.5, 5.2, 7.65], siliconeLiterature),
    conductivity: known([0.15, 0.16, 0.2], memory),
    heatCapacity: known([1400, 1460, 1500], memory),
    finishes: [castOnGlass, moulded],
    note: 'Cured at 25 to 200 °C: 1.3 to 3.0 MPa. The literature spans far more.',
  },
  {
    name: 'natural rubber',
    synonyms: ['NR', 'rubber', 'polyisoprene', 'Naturkautschuk', 'Gummi', 'Kautschuk'],
    family: 'elastomer',
    elasticModulus: megapascal([1, 2, 5], polymerChart),
    poissonRatio: known([0.4985, 0.499, 0.4999], memory),
    density: known([910, 930, 950], polymerChart),
    hardness: [hardness('Shore A', [40, 50, 60], memory)],
    strength: strength('tensile', [15, 25, 30], memory),
    conductivity: known([0.13, 0.14, 0.15], polymerChart),
    heatCapacity: known([1550, 1910, 2080], polymerChart),
    finishes: [castOnGlass, moulded],
    note: 'Unfilled; carbon black stiffens it several times.',
  },
  {
    name: 'nitrile rubber',
    synonyms: ['NBR', 'rubber', 'Nitrilkautschuk', 'Gummi'],
    family: 'elastomer',
    elasticModulus: megapascal([2, 3.4, 10], callister),
    poissonRatio: known([0.495, 0.499, 0.4999], memory),
    density: known([980, 1000, 1300], memory),
    hardness: [hardness('Shore A', [55, 70, 80], memory)],
    strength: strength('tensile', [6.9, 15, 24.1], callister),
    conductivity: known([0.2, 0.25, 0.25], polymerChart),
    heatCapacity: known([1350, 1950, 2000], memory),
    finishes: [moulded],
    note: 'Swells in some oils. The modulus is that at 100 % elongation.',
  },
]
