/** `4.99 N to 5.02 N`, or the one value where both ends print alike; undefined without values. */
export function printedSpan(values: readonly number[], print: (value: number) => string): string | undefined {
  const finite = values.filter(Number.isFinite)
  if (finite.length === 0) return undefined
  const low = print(Math.min(...finite))
  const high = print(Math.max(...finite))
  return low === high ? low : `${low} to ${high}`
}
