import { scaleLinear } from 'd3-scale'

/** Mantissas of a logarithmic axis from sparse to dense, as people write them on paper. */
const mantissas: readonly (readonly number[])[] = [
  [1],
  [1, 3],
  [1, 2, 5],
  [1, 2, 3, 5, 7],
  [1, 2, 3, 4, 5, 6, 7, 8, 9],
  [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9],
]

/**
 * Values worth a label on a logarithmic axis from `low` to `high` (both over zero): the densest set of round
 * mantissas of which no two stand closer than `closest`, a share of the axis; where a short axis holds fewer than three
 * of them, evenly spaced round values.
 */
export function logTicks(low: number, high: number, closest: number): readonly number[] {
  const span = Math.log(high / low)
  const apart = (values: readonly number[]): boolean =>
    values.every((value, index) => index === 0 || Math.log(value / (values[index - 1] ?? value)) >= closest * span)
  let best: readonly number[] = []
  for (const set of mantissas) {
    const values = inRange(set, low, high)
    if (apart(values) && values.length > best.length) best = values
  }
  if (best.length >= 3) return best
  if (high / low < 10) return linearTicks(low, high, closest).filter((value) => value > 0)
  const decades = inRange([1], low, high)
  for (let stride = 1; ; stride++) {
    const values = decades.filter((_, index) => index % stride === 0)
    if (apart(values)) return values
  }
}

export const linearTicks = (low: number, high: number, closest: number): readonly number[] => {
  const most = Math.max(2, Math.floor(1 / closest))
  for (let wanted = most; wanted >= 2; wanted--) {
    const ticks = scaleLinear().domain([low, high]).ticks(wanted)
    if (ticks.length <= most) return ticks
  }
  return []
}

/** All nine mantissas, for the small ticks without a label; none where the axis holds more than six decades. */
export const minorTicks = (low: number, high: number): readonly number[] =>
  high / low > 1e6 || high / low < 1.5 ? [] : inRange([1, 2, 3, 4, 5, 6, 7, 8, 9], low, high)

function inRange(set: readonly number[], low: number, high: number): readonly number[] {
  const values: number[] = []
  for (let decade = Math.floor(Math.log10(low)); decade <= Math.ceil(Math.log10(high)); decade++) {
    // Through the decimal text: 3 × 10⁻⁴ has to be the double that people mean by 0.0003.
    for (const mantissa of set) values.push(Number(`${mantissa}e${decade}`))
  }
  const slack = 1e-9
  return values.filter((value) => value >= low * (1 - slack) && value <= high * (1 + slack))
}

/** A tick as people write it: plain from 0.0001 to 99999, otherwise as a power of ten. */
export function tickLabel(value: number): string {
  if (value === 0) return '0'
  const size = Math.abs(value)
  const sign = value < 0 ? '−' : ''
  if (size >= 1e-4 && size < 1e5) return sign + String(Number(size.toPrecision(6)))
  const [mantissa, exponent] = size.toExponential(3).split('e')
  const short = String(Number(mantissa))
  return `${sign}${short === '1' ? '' : `${short}·`}10${superscript(Number(exponent))}`
}

const superscript = (exponent: number): string =>
  [...String(exponent)].map((digit) => (digit === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit)))).join('')
