/** Powers of ten that a double holds exactly. */
export const exactTens: readonly number[] = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`))

const splitter = 134_217_729 // 2^27 + 1
const largestWhole = 2 ** 53 // and above it sums may have been rounded
/** Far above the rounding of the steps below (about 2^-103), far below half a unit in the last place. */
const doubt = 2 ** -95

/** A number as the unrounded sum of two doubles, the second under half a unit in the last place of the first. */
const pair = new Float64Array(2)

/**
 * The double nearest to `(high + low)·10^power`, NaN where that cannot be told from here and the caller must ask
 * `Number()`. Both are whole and not negative, `low` is the smaller, and their sum may have more digits than a double.
 * Up to 2^53 and 10^22 one operation on exact numbers rounds once, so it is exact (Clinger 1990). Above, the operation
 * is done in pairs of doubles (Dekker 1971) and taken where the error it may have cannot change the rounding.
 */
export function exactDecimal(high: number, low: number, power: number): number {
  const sum = high + low
  if (power >= -22 && power <= 22 && sum < largestWhole) {
    return power < 0 ? sum / exactTens[-power] : sum * exactTens[power]
  }
  if (!(power >= -44 && power <= 44)) return Number.NaN
  pair[0] = sum
  pair[1] = low - (sum - high)
  for (let left = Math.abs(power); left > 0; left -= 22) {
    const ten = exactTens[Math.min(left, 22)]
    if (power < 0) divide(ten)
    else multiply(ten)
  }
  const error = pair[0] * doubt
  const rounded = pair[0] + (pair[1] - error)
  return rounded === pair[0] + (pair[1] + error) ? rounded : Number.NaN
}

/** What is lost when `product` is taken for a·b. */
function lostBy(product: number, a: number, b: number): number {
  const aBig = splitter * a
  const aHigh = aBig - (aBig - a)
  const aLow = a - aHigh
  const bBig = splitter * b
  const bHigh = bBig - (bBig - b)
  const bLow = b - bHigh
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow)
}

function multiply(factor: number): void {
  const first = pair[0] * factor
  const second = lostBy(first, pair[0], factor) + pair[1] * factor
  pair[0] = first + second
  pair[1] = second - (pair[0] - first)
}

function divide(divisor: number): void {
  const first = pair[0] / divisor
  const back = first * divisor
  const second = (pair[0] - back - lostBy(back, first, divisor) + pair[1]) / divisor
  pair[0] = first + second
  pair[1] = second - (pair[0] - first)
}
