import type { Section } from '../setup/keyKinds.ts'

/** How load and temperature change the friction that truly acts. */
export const conditionKeys: Section = {
  is: 'section',
  about: 'How load and temperature change the friction that truly acts; leave out for not at all.',
  keys: {
    loadExponent: {
      is: 'quantity',
      dimension: 'ratio',
      range: { least: -2, most: 2 },
      example: '0.33',
      default: '0',
      about: 'a of µ ∝ F^(−a).',
    },
    referenceForce: {
      is: 'quantity',
      dimension: 'force',
      range: { above: 0, most: 1e6 },
      example: '5 N',
      about: 'Axial force at which friction is that of the law; the force of the run if left out.',
    },
    activationEnergy: {
      is: 'quantity',
      dimension: 'ratio',
      range: { least: -500, most: 500 },
      example: '20',
      default: '0',
      about: 'E of exp(E/RT), a plain number of kJ/mol.',
    },
    referenceTemperature: {
      is: 'quantity',
      dimension: 'temperature',
      range: { above: 0, most: 3000 },
      example: '25 °C',
      about: 'Temperature at which friction is that of the law; that of the run if left out.',
    },
  },
}
