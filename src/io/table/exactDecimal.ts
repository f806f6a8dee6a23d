/** Powers of ten that a double holds exactly. */
export const exactTens: readonly number[] = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`))

const splitter = 134_217_729 // 2^27 + 1
const largestWhole = 2 ** 53
/** Far above the rounding of the double-double steps (about 2^-103), far below half a unit in the last place. */
const doubt = 2 ** -95

/** A number as the unrounded sum of two doubles, the second under half a unit in the last place of the first. */
interface Pair {
  readonly high: number
  readonly low: number
}

/**
 * The double nearest to `(leading * 10^trailingDigits + trailing) * 10^power`, undefined where that cannot be told
 * from here and the caller must ask `Number()`. `leading` holds up to 15 digits, `trailing` up to 4 more.
 * Up to 2^53 and 10^22 one operation on exact numbers rounds once, so it is exact (Clinger 1990). Above, the
 * operation is done in pairs of doubles (Dekker 1971) and taken when the error it may have cannot change the rounding.
 */
export function exactDecimal(digits: DecimalDigits): number | undefined {
  const { leading, trailing, trailingDigits, power } = digits
  if (power < -44 || power > 44) return undefined
  if (trailingDigits === 0 && power >= -22 && power <= 22) {
    return power < 0 ? leading / exactTens[-power] : leading * exactTens[power]
  }
  let pair = twoSum(productOf(leading, exactTens[trailingDigits]), trailing)
  if (pair.low === 0 && pair.high <= largestWhole && power >= -22 && power <= 22) {
    return power < 0 ? pair.high / exactTens[-power] : pair.high * exactTens[power]
  }
  for (let left = Math.abs(power); left > 0; left -= 22) {
    const ten = exactTens[Math.min(left, 22)]
    pair = power < 0 ? quotient(pair, ten) : times(pair, ten)
  }
  const error = pair.high * doubt
  const rounded = pair.high + (pair.low - error)
  return rounded === pair.high + (pair.low + error) ? rounded : undefined
}

export interface DecimalDigits {
  readonly leading: number
  readonly trailing: number
  readonly trailingDigits: number
  readonly power: number
}

/** a·b without rounding. */
function productOf(a: number, b: number): Pair {
  const high = a * b
  const aBig = splitter * a
  const aHigh = aBig - (aBig - a)
  const aLow = a - aHigh
  const bBig = splitter * b
  const bHigh = bBig - (bBig - b)
  const bLow = b - bHigh
  return { high, low: aLow * bLow - (high - aHigh * bHigh - aLow * bHigh - aHigh * bLow) }
}

function twoSum(pair: Pair, add: number): Pair {
  const sum = pair.high + add
  const moved = sum - pair.high
  const lost = pair.high - (sum - moved) + (add - moved)
  const low = lost + pair.low
  const high = sum + low
  return { high, low: low - (high - sum) }
}

function times(pair: Pair, factor: number): Pair {
  const whole = productOf(pair.high, factor)
  const low = whole.low + pair.low * factor
  const high = whole.high + low
  return { high, low: low - (high - whole.high) }
}

function quotient(pair: Pair, divisor: number): Pair {
  const first = pair.high / divisor
  const back = productOf(first, divisor)
  const second = (pair.high - back.high - back.low + pair.low) / divisor
  const high = first + second
  return { high, low: second - (high - first) }
}
