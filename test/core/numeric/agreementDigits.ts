/** Digits to which `got` agrees with a certified value, at most 16; by absolute size where that value is zero. */
export function agreementDigits(got: number, certified: number): number {
  if (got === certified) return 16
  const error = Math.abs(got - certified) / (certified === 0 ? 1 : Math.abs(certified))
  return Number.isNaN(error) ? 0 : Math.min(16, Math.max(0, -Math.log10(error)))
}

/** The worst agreement in a list. */
export const fewestDigits = (got: ArrayLike<number>, certified: readonly number[]): number =>
  Math.min(...certified.map((want, i) => agreementDigits(got[i], want)))
