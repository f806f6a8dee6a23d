import type { FlowLawName, LiquidFamily } from '../../core/material/index.ts'
import { quantityKey } from '../question/askKeys.ts'
import type { Section } from '../setup/keyKinds.ts'
import { namedKeys } from './valueKeys.ts'

/** Flow laws as people write them. */
export const flowLawsWritten: Readonly<Record<string, FlowLawName>> = {
  Newton: 'newtonian',
  'power law': 'powerLaw',
  'Herschel–Bulkley': 'herschelBulkley',
  Cross: 'cross',
  'Carreau–Yasuda': 'carreauYasuda',
}

/** Kinds of liquids as people write them. */
export const liquidFamiliesWritten: Readonly<Record<string, LiquidFamily>> = {
  water: 'water',
  glycerol: 'glycerol',
  'paraffinic oil': 'paraffinicOil',
  'naphthenic oil': 'naphthenicOil',
  polyalphaolefin: 'polyalphaolefin',
  ester: 'ester',
  polyglycol: 'polyglycol',
  'silicone oil': 'siliconeOil',
  squalane: 'squalane',
}

/** A liquid of one's own: viscosities at temperatures, or a flow curve. */
export const liquidKeys: Section = {
  is: 'section',
  about: 'A liquid: viscosities at temperatures, or a measured flow curve at one.',
  keys: {
    ...namedKeys('oat drink, plain'),
    viscosities: {
      is: 'text',
      example: '5.1 mPa·s at 20 °C; 3.5 mPa·s at 35 °C',
      about: 'Measured viscosities, each with its temperature, and semicolons between them.',
    },
    viscosityUncertainty: quantityKey(
      'ratio',
      { least: 0, below: 1 },
      { example: '3 %', about: 'Relative standard uncertainty of these viscosities.' },
    ),
    flowCurve: {
      is: 'section',
      about: 'Viscosity over shear rate, measured at one temperature.',
      keys: {
        file: {
          is: 'text',
          required: true,
          example: 'oat-drink.flow.csv',
          about:
            'Table with columns for shear rate and viscosity (or shear stress) and their units, seen from this file.',
        },
        temperature: quantityKey(
          'temperature',
          { least: 150, most: 800 },
          { example: '35 °C', required: true, about: 'At which it was measured; believed within 1 K.' },
        ),
        law: {
          is: 'choice',
          choices: ['best', ...Object.keys(flowLawsWritten)],
          example: 'best',
          default: 'best',
          about: 'Law that is fitted; the best by the corrected Akaike criterion if left out.',
        },
      },
    },
    density: quantityKey(
      'ratio',
      { least: 100, most: 25_000 },
      { example: '1030', about: 'Density in kg/m³, as a plain number.' },
    ),
    family: {
      is: 'choice',
      choices: Object.keys(liquidFamiliesWritten),
      example: 'water',
      about: 'Kind of liquid, from which a usual pressure–viscosity coefficient follows.',
    },
    pressureViscosity: quantityKey(
      'ratio',
      { least: 0, most: 100 },
      {
        example: '0.5',
        about: 'Measured pressure–viscosity coefficient in 1/GPa, as a plain number; goes before the family.',
      },
    ),
  },
}
