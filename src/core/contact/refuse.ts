// Written so that NaN fails; the words are put together only on the way out, as these stand in inner loops.

/** Throws unless the value is more than zero and finite. */
export function mustBePositive(value: number, name: string, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be more than zero and finite, got ${inUnit(value, unit)}`)
  }
}

/** Throws unless the value is zero or more and finite. */
export function mustNotBeNegative(value: number, name: string, unit: string): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be zero or more and finite, got ${inUnit(value, unit)}`)
  }
}

/** Throws unless −1 < ν ≤ 0.5, which every isotropic elastic body keeps to. */
export function mustBePoissonRatio(value: number): void {
  if (!(value > -1 && value <= 0.5)) {
    throw new RangeError(`Poisson ratio must be more than -1 and at most 0.5, got ${value}`)
  }
}

const inUnit = (value: number, unit: string): string => (unit === '' ? `${value}` : `${value} ${unit}`)
