import type { QuantityKey, Section } from './keyKinds.ts'

const length = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'length',
  range: { above: 0, most: 0.1 },
  example,
  about,
})

/** What was found on the bodies after the test. */
export const wornKeys: Section = {
  is: 'section',
  about: 'What was found on the bodies after the test. Leave out what nobody looked at.',
  keys: {
    scars: {
      is: 'text',
      example: '0.42 x 0.40 mm; 0.44 mm; 0.51 x 0.55 mm',
      about:
        'Diameters of the worn flats on balls or domed pins, along x across the sliding, one flat between semicolons.',
    },
    scarUncertainty: {
      ...length('Standard uncertainty of one reading of a diameter.', '5 µm'),
      default: '5 µm',
    },
    sections: {
      is: 'text',
      example: '120 µm²; 131 µm²',
      about: 'Areas of profiles across the track, one for each place, between semicolons.',
    },
    sectionUncertainty: {
      is: 'quantity',
      dimension: 'area',
      range: { above: 0, most: 1e-4 },
      example: '5 µm²',
      about: 'Standard uncertainty of one such area.',
    },
    trackWidth: length('Width of the track on a level plate, where there is no profile.', '0.64 mm'),
    trackWidthUncertainty: { ...length('Standard uncertainty of the width.', '5 µm'), default: '5 µm' },
    distanceBefore: {
      is: 'quantity',
      dimension: 'length',
      range: { above: 0, most: 1e7 },
      example: '2 m',
      about: 'How far the same surfaces had slid under the same load before this record.',
    },
    growthPerKelvin: {
      ...length('By how much shaft and fixture close the gap when they warm by a kelvin.', '1.5 µm'),
      default: '1.5 µm',
    },
    growthUncertainty: length('Standard uncertainty of it.', '0.3 µm'),
  },
}
