import { hardnessScales, materialFamilies } from '../../core/material/index.ts'
import type { Section } from '../setup/keyKinds.ts'
import { namedKeys, valueSection } from './valueKeys.ts'

const strengthKinds = ['yield', 'flexural', 'tensile', 'compressive'] as const

/** A body of one's own. One that bears the name of the table changes what is given here and keeps the rest. */
export const bodyKeys: Section = {
  is: 'section',
  about:
    'What a body is made of, near room temperature. A name of the built-in table changes what is given and keeps the rest.',
  keys: {
    ...namedKeys('birch plywood'),
    family: {
      is: 'choice',
      choices: materialFamilies,
      example: 'natural',
      default: 'other',
      about: 'What kind of body it is.',
    },
    elasticModulus: valueSection('pressure', {
      about: "Young's modulus.",
      example: '9 GPa',
      range: { above: 0, most: 2e12 },
    }),
    poissonRatio: valueSection('ratio', {
      about: "Poisson's ratio.",
      example: '0.35',
      range: { above: -1, most: 0.5 },
    }),
    density: valueSection('ratio', {
      about: 'Density in kg/m³, as a plain number.',
      example: '700',
      range: { least: 5, most: 25_000 },
    }),
    strength: valueSection(
      'pressure',
      { about: 'Where it gives way.', example: '40 MPa', range: { above: 0, most: 1e11 } },
      {
        kind: {
          is: 'choice',
          required: true,
          choices: strengthKinds,
          example: 'yield',
          about: 'yield: dents in tension. flexural: cracks in bending. tensile: tears. compressive: gives way.',
        },
      },
    ),
    hardness: valueSection(
      'ratio',
      { about: 'Hardness number on a scale.', example: '30', range: { above: 0, most: 20_000 } },
      {
        scale: { is: 'choice', required: true, choices: hardnessScales, example: 'Brinell N/mm²', about: 'Its scale.' },
      },
    ),
    conductivity: valueSection('ratio', {
      about: 'Thermal conductivity in W/(m·K), as a plain number.',
      example: '0.15',
      range: { above: 0, most: 5000 },
    }),
    heatCapacity: valueSection('ratio', {
      about: 'Specific heat in J/(kg·K), as a plain number.',
      example: '1600',
      range: { above: 0, most: 20_000 },
    }),
    roughness: valueSection(
      'length',
      { about: 'Usual arithmetic-mean roughness Ra of a finish.', example: '2 µm', range: { least: 0, most: 1e-3 } },
      { finish: { is: 'text', required: true, example: 'sanded 240', about: 'The finish.' } },
    ),
  },
}
