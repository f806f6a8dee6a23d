import type { StandardInput } from './standardOf.ts'

/**
 * ∂f/∂xᵢ at the estimates by central differences over ± u(xᵢ)/100 with one step of Richardson, the error of which is of fourth
 * order; a step of that size asks the function about what it is used for (JCGM 100:2008, 5.1.3 note 2). Zero where u is zero.
 */
export function sensitivitiesOf(
  evaluate: (values: ArrayLike<number>) => number,
  inputs: readonly StandardInput[],
): Float64Array {
  const at = Float64Array.from(inputs, ({ estimate }) => estimate)
  return Float64Array.from(inputs, ({ standardUncertainty }, i) => {
    if (standardUncertainty === 0) return 0
    const slope = (step: number): number => {
      const kept = at[i]
      at[i] = kept + step
      const above = evaluate(at)
      const high = at[i]
      at[i] = kept - step
      const below = evaluate(at)
      const low = at[i]
      at[i] = kept
      // Over the distance that was really gone, not the one that was meant.
      return (above - below) / (high - low)
    }
    const wide = slope(stepShare * standardUncertainty)
    const narrow = slope((stepShare / 2) * standardUncertainty)
    return (4 * narrow - wide) / 3
  })
}

const stepShare = 0.01
