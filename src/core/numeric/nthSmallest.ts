/**
 * The value that would stand at place `n` (from 0) if `values` were sorted, NaN behind all numbers. Puts `values` in
 * another order. Takes time in proportion to their number where sorting takes more (Hoare 1961, Algorithm 65).
 */
export function nthSmallest(values: Float64Array, n: number): number {
  if (!(Number.isInteger(n) && n >= 0 && n < values.length)) {
    throw new RangeError(`place must be a whole number from 0 to ${values.length - 1}, got ${n}`)
  }
  let low = 0
  let high = numbersFirst(values) - 1
  if (n > high) return Number.NaN
  while (low < high) {
    const pivot = middleOf(values[low], values[(low + high) >> 1], values[high])
    let i = low
    let j = high
    while (i <= j) {
      while (values[i] < pivot) i++
      while (values[j] > pivot) j--
      if (i <= j) {
        const moved = values[i]
        values[i++] = values[j]
        values[j--] = moved
      }
    }
    if (n <= j) high = j
    else if (n >= i) low = i
    else return pivot
  }
  return values[n]
}

/** Moves NaN to the end; gives how many numbers stand before. */
function numbersFirst(values: Float64Array): number {
  let count = 0
  for (let i = 0; i < values.length; i++) {
    const value = values[i]
    if (Number.isNaN(value)) continue
    values[i] = values[count]
    values[count++] = value
  }
  return count
}

const middleOf = (a: number, b: number, c: number): number => Math.max(Math.min(a, b), Math.min(Math.max(a, b), c))
