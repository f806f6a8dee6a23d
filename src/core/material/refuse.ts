import { type Span, within } from './span.ts'

/** A number with its unit; plain numbers stand alone. */
export const inUnit = (value: number | string, unit: string): string => (unit === '' ? `${value}` : `${value} ${unit}`)

/** Throws unless the value is more than zero and finite; NaN fails. */
export function mustBePositive(value: number, name: string, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be more than zero and finite, got ${inUnit(value, unit)}`)
  }
}

/** Throws unless the value is zero or more and finite; NaN fails. */
export function mustNotBeNegative(value: number, name: string, unit: string): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be zero or more and finite, got ${inUnit(value, unit)}`)
  }
}

/** Throws unless the value lies in the span; NaN fails. */
export function mustLieWithin(value: number, span: Span, [name, unit]: readonly [name: string, unit: string]): void {
  if (!within(value, span)) {
    throw new RangeError(`${name} must be ${inUnit(`${span.low} to ${span.high}`, unit)}, got ${inUnit(value, unit)}`)
  }
}
