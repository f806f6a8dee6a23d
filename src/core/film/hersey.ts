import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Metre, MetrePerSecond, Newton, Pascal, PascalSecond } from '../terms/index.ts'

/** What the axis of a friction curve may be called after Hersey; papers mean any of these, so a figure must say which. */
export const herseyDefinitions = {
  viscositySpeed: { formula: 'ηv', unit: 'N/m' },
  perLoad: { formula: 'ηv/W', unit: '1/m' },
  perPressure: { formula: 'ηv/p', unit: 'm' },
  perPressureAndWidth: { formula: 'ηv/(pL)', unit: '' },
} as const

/** Name of one definition. */
export type HerseyDefinition = keyof typeof herseyDefinitions

interface Dragged {
  readonly viscosity: PascalSecond
  /** The sliding speed v, not the entrainment speed. */
  readonly slidingSpeed: MetrePerSecond
}

/** A definition with what it draws on. */
export type HerseyTerms = Dragged &
  (
    | { readonly definition: 'viscositySpeed' }
    /** Load on one contact. */
    | { readonly definition: 'perLoad'; readonly load: Newton }
    /** Mean pressure over the contact. */
    | { readonly definition: 'perPressure'; readonly meanPressure: Pascal }
    /** A width of the contact; say which (its diameter, the width of a ring). */
    | { readonly definition: 'perPressureAndWidth'; readonly meanPressure: Pascal; readonly width: Metre }
  )

/** A Hersey number in the unit of `herseyDefinitions`. */
export function herseyNumber(terms: HerseyTerms): number {
  mustBePositive(terms.viscosity, 'viscosity', 'Pa·s')
  mustNotBeNegative(terms.slidingSpeed, 'sliding speed', 'm/s')
  const dragged = terms.viscosity * terms.slidingSpeed
  if (terms.definition === 'viscositySpeed') return dragged
  if (terms.definition === 'perLoad') {
    mustBePositive(terms.load, 'load', 'N')
    return dragged / terms.load
  }
  mustBePositive(terms.meanPressure, 'mean pressure', 'Pa')
  if (terms.definition === 'perPressure') return dragged / terms.meanPressure
  mustBePositive(terms.width, 'width', 'm')
  return dragged / (terms.meanPressure * terms.width)
}
