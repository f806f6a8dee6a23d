import { known } from '../knownValue.ts'
import { callister, memory } from '../sources.ts'
import { firePolished, ground, polished } from './finishes.ts'
import type { Material } from './material.ts'
import { gigapascal, hardness, strength } from './valueUnits.ts'

/** Glasses. Their strength is that of bending and hangs on scratches: count on the low end. */
export const glasses: readonly Material[] = [
  {
    name: 'soda-lime glass',
    synonyms: [
      'glass',
      'Glas',
      'float glass',
      'window glass',
      'microscope slide',
      'Kalk-Natron-Glas',
      'Floatglas',
      'Fensterglas',
      'Objektträger',
    ],
    family: 'glass',
    elasticModulus: gigapascal([68, 69, 74], callister),
    poissonRatio: known([0.2, 0.22, 0.24], callister),
    density: known([2480, 2500, 2520], memory),
    hardness: [hardness('HV', [500, 525, 550], memory)],
    strength: strength('flexural', [30, 69, 100], callister),
    conductivity: known([0.9, 1, 1.7], memory),
    heatCapacity: known([720, 840, 880], callister),
    finishes: [firePolished, polished, ground],
    note: 'Sources disagree on its conductivity: 1.0 for float glass, 1.7 in Callister.',
  },
  {
    name: 'borosilicate glass 3.3',
    synonyms: ['glass', 'Glas', 'borosilicate', 'borosilicate glass', 'Borosilikatglas', 'Borosilicatglas'],
    family: 'glass',
    elasticModulus: gigapascal([63, 64, 70], memory),
    poissonRatio: known([0.19, 0.2, 0.2], memory),
    density: known([2220, 2230, 2240], memory),
    hardness: [hardness('HV', [410, 450, 480], memory)],
    strength: strength('flexural', [25, 69, 100], callister),
    conductivity: known([1.1, 1.2, 1.4], memory),
    heatCapacity: known([750, 850, 850], callister),
    finishes: [firePolished, polished, ground],
    note: 'Callister has 70 GPa and 1.4 W/(m·K).',
  },
  {
    name: 'fused silica',
    synonyms: ['glass', 'Glas', 'quartz glass', 'silica glass', 'Quarzglas', 'Kieselglas'],
    family: 'glass',
    elasticModulus: gigapascal([70, 73, 73], callister),
    poissonRatio: known([0.16, 0.17, 0.18], memory),
    density: known([2200, 2200, 2210], memory),
    hardness: [hardness('HK', [500, 580, 620], memory)],
    strength: strength('flexural', [50, 104, 110], callister),
    conductivity: known([1.3, 1.4, 1.4], callister),
    heatCapacity: known([700, 740, 770], callister),
    finishes: [firePolished, polished, ground],
  },
]
