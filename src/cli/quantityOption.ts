import { InvalidArgumentError } from 'commander'
import { type Dimension, parseQuantity, printExact } from '../core/quantity/index.ts'

/** Reads an option that takes a quantity above zero with its unit, and at most `most`. */
export const quantityOption =
  (dimension: Dimension, most = Number.POSITIVE_INFINITY) =>
  (text: string): number => {
    const read = parseQuantity(text, dimension)
    if (!read.ok) throw new InvalidArgumentError(`${read.what} ${read.mend}`)
    if (read.value > 0 && read.value <= most) return read.value
    throw new InvalidArgumentError(
      `Write a value above zero${most === Number.POSITIVE_INFINITY ? '' : ` and at most ${printExact(most, dimension)}`}.`,
    )
  }
