import { printQuantity } from '../quantity/index.ts'
import type { SheetCheck, SheetEntry } from '../terms/index.ts'

// Times and thresholds of this sheet are common practice without a source, unless the question gave them.

/** An entry; what is left out is nothing. */
export const entry = (id: string, text: string, more: Partial<SheetEntry> = {}): SheetEntry => ({
  id,
  text,
  cautions: [],
  check: null,
  duration: 0,
  distance: 0,
  ...more,
})

/** Seconds of so many minutes. */
export const minutes = (count: number): number => 60 * count

/** A force in words. */
export const force = (value: number): string => printQuantity(value, 'force', { digits: 3 })
/** A length in words. */
export const length = (value: number): string => printQuantity(value, 'length', { digits: 3 })

/** A reading that must lie around a middle. */
export function around(
  read: string,
  [middle, half]: readonly [middle: number, half: number],
  more: Pick<SheetCheck, 'dimension' | 'otherwise'>,
): SheetCheck {
  const words = (value: number): string =>
    more.dimension === 'yes' ? '' : printQuantity(value, more.dimension, { digits: 4 }).replace(/^-/, '−')
  return {
    read,
    low: middle - half,
    high: middle + half,
    accept: `${words(middle - half)} to ${words(middle + half)}`,
    ...more,
  }
}

/** A reading that has no lower limit. */
export const atMost = (read: string, high: number, more: Pick<SheetCheck, 'dimension' | 'otherwise'>): SheetCheck => ({
  read,
  low: null,
  high,
  accept: `at most ${more.dimension === 'yes' ? '' : printQuantity(high, more.dimension, { digits: 3 })}`,
  ...more,
})

/** Something that is done or not. */
export const done = (read: string, otherwise: string): SheetCheck => ({
  read,
  dimension: 'yes',
  low: null,
  high: null,
  accept: 'yes',
  otherwise,
})
