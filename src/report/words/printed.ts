import { type Dimension, printMeasured, printQuantity } from '../../core/quantity/index.ts'

/** A hyphen before a digit is a minus. */
const withMinus = (text: string): string => text.replace(/-(?=\d)/g, '−')

/** A quantity with three digits: enough for a sentence, the tables hold more. */
export const printed = (value: number, dimension: Dimension, digits = 3): string =>
  withMinus(printQuantity(value, dimension, { digits }))

/** A share as a percentage with two digits. */
export const percent = (share: number): string => withMinus(`${Number((100 * share).toPrecision(2))} %`)

/** Value and standard uncertainty; the value alone where nothing is known of it. */
export const measured = (value: number, uncertainty: number, dimension: Dimension): string =>
  uncertainty > 0 && Number.isFinite(uncertainty)
    ? withMinus(printMeasured(value, uncertainty, dimension))
    : printed(value, dimension)

/** A plain number with so many digits. */
export const plain = (value: number, digits: number): string => withMinus(String(Number(value.toPrecision(digits))))

/** The same with its last zeroes, so that a column shows how well all are known. */
export const significant = (value: number, digits: number): string => {
  const text = value.toPrecision(digits)
  return text.includes('e') ? plain(value, digits) : withMinus(text)
}

/** A number with so many decimals. */
export const decimals = (value: number, count: number): string => withMinus(value.toFixed(count))

const smallNumbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

/** A count as it stands in a sentence: words up to nine. */
export const inWords = (count: number): string => smallNumbers[count] ?? grouped(count)

/** `one step`, `three steps`, `12 steps`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${inWords(count)} ${count === 1 ? one : many}`

/** A count with thin spaces between groups of three digits: 12 345. */
export const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, '\u202f')

/** `a, b and c`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`

/** The sentence with a capital at its head. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** The text without a capital at its head. */
export const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
