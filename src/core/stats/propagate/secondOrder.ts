import type { StandardInput } from './standardOf.ts'

/**
 * What the terms of next higher order add to the variance and to the mean of a result of uncorrelated, symmetric inputs:
 * Σᵢⱼ(½fᵢⱼ² + fᵢfᵢⱼⱼ)uᵢ²uⱼ² (JCGM 100:2008, 5.1.2 note) and ½Σfᵢᵢuᵢ². `normal` inputs bring fᵢᵢ²uᵢ⁴/2 for their own square as the
 * formula has it.
 */
export function secondOrder(
  evaluate: (values: ArrayLike<number>) => number,
  inputs: readonly StandardInput[],
): { readonly variance: number; readonly shift: number } {
  const at = inputs.map(({ estimate }) => estimate)
  const u = inputs.map(({ standardUncertainty }) => standardUncertainty)
  const some = u.flatMap((size, i) => (size > 0 ? [i] : []))
  const f0 = evaluate(at)
  /** f with input i moved by a of its uncertainties and input j by b. */
  const moved = (i: number, a: number, { j, b }: { readonly j: number; readonly b: number }): number => {
    const values = at.slice()
    values[i] += a * u[i]
    values[j] += b * u[j]
    return evaluate(values)
  }
  let variance = 0
  let shift = 0
  for (const i of some) {
    // All derivatives in units of the uncertainty, over steps of half of one.
    const first = (moved(i, h, { j: i, b: 0 }) - moved(i, -h, { j: i, b: 0 })) / (2 * h)
    for (const j of some) {
      const alike = i === j
      const second = alike
        ? (moved(i, h, { j, b: 0 }) - 2 * f0 + moved(i, -h, { j, b: 0 })) / h ** 2
        : (moved(i, h, { j, b: h }) -
            moved(i, h, { j, b: -h }) -
            moved(i, -h, { j, b: h }) +
            moved(i, -h, { j, b: -h })) /
          (4 * h ** 2)
      const third = thirdDerivative(i, j, moved)
      variance += second ** 2 / 2 + first * third
      if (alike) shift += second / 2
    }
  }
  return { variance, shift }
}

const h = 0.5

type Moved = (i: number, a: number, other: { readonly j: number; readonly b: number }) => number

/** fᵢⱼⱼ in units of the uncertainties. */
function thirdDerivative(i: number, j: number, moved: Moved): number {
  if (i === j) {
    const at = (a: number): number => moved(i, a, { j, b: 0 })
    return (at(2 * h) - 2 * at(h) + 2 * at(-h) - at(-2 * h)) / (2 * h ** 3)
  }
  const curved = (a: number): number =>
    (moved(i, a, { j, b: h }) - 2 * moved(i, a, { j, b: 0 }) + moved(i, a, { j, b: -h })) / h ** 2
  return (curved(h) - curved(-h)) / (2 * h)
}
