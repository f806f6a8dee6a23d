/**
 * How a value came into the table. `source`: an excerpt of the source was read. `memory`: typical, nobody has held it
 * against the print. `common practice`: known in the trade, no source. `own`: given by a user.
 */
export const seenKinds = ['source', 'memory', 'common practice', 'own'] as const

/** One of these. */
export type Seen = (typeof seenKinds)[number]

/** Where a value comes from. */
export interface From {
  readonly source: string
  readonly seen: Seen
}

/**
 * A value in SI with the span in which batches, makers and books lie. `seen` speaks of the value; the ends may be wider than
 * the one source that was read.
 */
export interface KnownValue extends From {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** Makes a value from its span in a handier unit: `known([low, value, high], from, factor)`. */
export function known(
  [low, value, high]: readonly [low: number, value: number, high: number],
  from: From,
  factor = 1,
): KnownValue {
  if (!(low <= value && value <= high))
    throw new RangeError(`a value must lie in its span, got ${low}, ${value}, ${high}`)
  // Twelve digits: 11 per GPa is 1.1e-8 per Pa, not 1.1000000000000001e-8, also where it is written out.
  const scaled = (number: number): number => Number((number * factor).toPrecision(12))
  return { value: scaled(value), low: scaled(low), high: scaled(high), ...from }
}
