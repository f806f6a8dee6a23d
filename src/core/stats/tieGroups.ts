/** Sizes of the groups of equal values that have more than one member. */
export function tieGroups(values: ArrayLike<number>): number[] {
  const sorted = Float64Array.from(values).sort()
  const sizes: number[] = []
  for (let i = 0; i < sorted.length; ) {
    let end = i + 1
    while (end < sorted.length && sorted[end] === sorted[i]) end++
    if (end - i > 1) sizes.push(end - i)
    i = end
  }
  return sizes
}
