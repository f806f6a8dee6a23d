import type { Section, TextKey } from './keyKinds.ts'

const text = (about: string, example: string): TextKey => ({ is: 'text', about, example })

/** Hotter or colder than any rig; 0 K itself cannot be. */
const temperatureRange = { above: 0, most: 2273.15 } as const

export const runKeys: Section = {
  is: 'section',
  about: 'What was commanded and around which sample. A value that the record holds as a column is taken from there.',
  keys: {
    axialForce: {
      is: 'quantity',
      dimension: 'force',
      range: { above: 0, most: 1e5 },
      example: '5 N',
      about: 'Axial force that the rig was told to hold. Needed when the record has no axial-force column.',
    },
    temperature: {
      is: 'quantity',
      dimension: 'temperature',
      range: temperatureRange,
      example: '25 °C',
      about: 'Temperature that the rig was told to hold.',
    },
    angularVelocity: {
      is: 'quantity',
      dimension: 'angularVelocity',
      range: { above: 0, most: 1e5 },
      example: '100 1/min',
      about: 'Rotation, when the record has no speed column.',
    },
    slidingSpeed: {
      is: 'quantity',
      dimension: 'velocity',
      range: { above: 0, most: 1e4 },
      example: '0.1 m/s',
      about: 'Sliding speed on the track instead of the rotation; give one of the two.',
    },
    sample: text('Name of the sample.', 'lacquer A'),
    operator: text('Who ran it.', 'A. Nother'),
    note: text('Anything else worth keeping.', 'plate cleaned with isopropanol, used within an hour'),
    relativeHumidity: {
      is: 'quantity',
      dimension: 'ratio',
      range: { least: 0, most: 1 },
      example: '50 %',
      about: 'Relative humidity of the room; dry friction depends on it.',
    },
    roomTemperature: {
      is: 'quantity',
      dimension: 'temperature',
      range: temperatureRange,
      example: '23 °C',
      about: 'Temperature of the room.',
    },
  },
}
