/** Numbers as they come over the wire, where NaN is null. */
export const numbersOf = (values: readonly (number | null)[]): Float64Array =>
  Float64Array.from(values, (value) => value ?? Number.NaN)
