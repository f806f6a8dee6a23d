/** The argument back if it is a probability. */
export function probabilityChecked(probability: number): number {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`probability must lie between 0 and 1, got ${probability}`)
  }
  return probability
}
