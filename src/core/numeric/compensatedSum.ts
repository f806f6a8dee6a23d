/** Sum of all values with the rounding of each addition carried along (Neumaier 1974, after Kahan 1965). */
export function compensatedSum(values: ArrayLike<number>): number {
  let sum = 0
  let lost = 0
  for (let i = 0; i < values.length; i++) {
    const value = values[i]
    const next = sum + value
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum
    sum = next
  }
  // An infinite or undefined sum has no rounding to give back.
  return Number.isFinite(lost) ? sum + lost : sum
}
