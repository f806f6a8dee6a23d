/**
 * Probabilities adjusted for the number of tests so that the chance of any false finding keeps to the level (Holm 1979, Scand.
 * J. Stat. 6:65), in the order given.
 */
export function holm(probabilities: readonly number[]): number[] {
  const bad = probabilities.find((p) => !(p >= 0 && p <= 1))
  if (bad !== undefined) throw new RangeError(`probability must lie between 0 and 1, got ${bad}`)
  const order = probabilities.map((_, i) => i).sort((a, b) => probabilities[a] - probabilities[b])
  const adjusted = probabilities.slice()
  let highest = 0
  for (const [rank, i] of order.entries()) {
    highest = Math.max(highest, Math.min(1, (probabilities.length - rank) * probabilities[i]))
    adjusted[i] = highest
  }
  return adjusted
}
