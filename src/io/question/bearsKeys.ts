import type { Section } from '../setup/keyKinds.ts'
import { quantityKey } from './askKeys.ts'

const anyStrength = { above: 0, most: 1e12 } as const

const body = (about: string): Section => ({
  is: 'section',
  about,
  keys: {
    yieldStrength: quantityKey('pressure', anyStrength, {
      example: '60 MPa',
      about: 'Yield strength in tension, of what dents.',
    }),
    flexuralStrength: quantityKey('pressure', anyStrength, {
      example: '50 MPa',
      about: 'Strength in bending, of what cracks: glass and ceramics.',
    }),
    wearRate: quantityKey(
      'ratio',
      { least: 0, most: 1e3 },
      {
        example: '1e-6',
        about:
          'Specific wear rate in mm³/(N·m), as a plain number. Good to a factor of ten at best unless measured on this pair.',
      },
    ),
    plateThickness: quantityKey(
      'length',
      { above: 0, most: 1 },
      {
        example: '3 mm',
        about: 'Thickness of the whole body, coating included.',
      },
    ),
  },
})

/** What the bodies bear; what is left out is not judged. */
export const bearsKeys: Section = {
  is: 'section',
  about: 'What the bodies bear. What is left out is not judged, and the plan says so.',
  keys: { upper: body('The body on the shaft.'), lower: body('The body in the seat.') },
}
