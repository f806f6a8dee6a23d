import type { Section } from './keyKinds.ts'

const surface = (about: string, example: string): Section => ({
  is: 'section',
  required: true,
  about,
  keys: {
    name: { is: 'text', required: true, example, about: 'What the surface is.' },
    roughness: {
      is: 'quantity',
      dimension: 'length',
      range: { above: 0, most: 1e-3 },
      example: '0.05 µm',
      about: 'Root-mean-square roughness Rq.',
    },
    roughnessUncertainty: {
      is: 'quantity',
      dimension: 'length',
      range: { least: 0, most: 1e-3 },
      example: '0.01 µm',
      about: 'Standard uncertainty of the roughness.',
    },
    elasticModulus: {
      is: 'quantity',
      dimension: 'pressure',
      range: { above: 0, most: 2e12 },
      example: '210 GPa',
      about: "Young's modulus of the surface body or layer.",
    },
    poissonRatio: {
      is: 'quantity',
      dimension: 'ratio',
      range: { least: -1, most: 0.5 },
      example: '0.3',
      about: "Poisson's ratio.",
    },
    thickness: {
      is: 'quantity',
      dimension: 'length',
      range: { above: 0, most: 0.1 },
      example: '40 µm',
      about: 'Thickness of a coating or soft layer. Leave out for a solid body.',
    },
  },
})

export const pairKeys: Section = {
  is: 'section',
  required: true,
  about: 'The two surfaces that slide on each other.',
  keys: {
    upper: surface('The body on the shaft.', 'steel ball, 100Cr6'),
    lower: surface('The body in the seat.', 'lacquer on a glass plate'),
  },
}

export const liquidKeys: Section = {
  is: 'section',
  about: 'The liquid between the surfaces. Leave out for dry sliding.',
  keys: {
    name: { is: 'text', required: true, example: 'oat drink', about: 'What the liquid is.' },
    viscosity: {
      is: 'quantity',
      dimension: 'viscosity',
      range: { above: 0, most: 1e6 },
      example: '1.5 mPa·s',
      about: 'Dynamic viscosity at the test temperature.',
    },
    viscosityUncertainty: {
      is: 'quantity',
      dimension: 'viscosity',
      range: { least: 0, most: 1e6 },
      example: '0.05 mPa·s',
      about: 'Standard uncertainty of the viscosity.',
    },
    byTemperature: {
      is: 'text',
      example: '12.1 mPa·s at 20 °C; 5.2 mPa·s at 40 °C',
      about: 'Viscosities measured at several temperatures, between semicolons.',
    },
    byRate: {
      is: 'text',
      example: '210 mPa·s at 1 1/s; 90 mPa·s at 100 1/s',
      about: 'Flow curve at the temperature of the run: viscosities at shear rates, between semicolons.',
    },
  },
}
