import { summary } from './summary.ts'

/** One input of a budget. */
export interface UncertaintyPart {
  readonly standardUncertainty: number
  /** ∂result/∂input; 1 where left out. */
  readonly sensitivity?: number
  /** Infinity where left out. */
  readonly degreesOfFreedom?: number
}

/** A combined standard uncertainty with its effective degrees of freedom. */
export interface CombinedUncertainty {
  readonly standardUncertainty: number
  /** Not rounded; `studentTQuantile` takes it as it is. */
  readonly degreesOfFreedom: number
}

/** u² = Σ(cᵢuᵢ)² for uncorrelated inputs (JCGM 100:2008, 5.1.2), with the degrees of freedom of Welch and Satterthwaite. */
export function combineUncertainty(parts: readonly UncertaintyPart[]): CombinedUncertainty {
  const shares = parts.map(({ standardUncertainty, sensitivity = 1, degreesOfFreedom = Number.POSITIVE_INFINITY }) => {
    if (!(standardUncertainty >= 0))
      throw new RangeError(`uncertainty must be zero or more, got ${standardUncertainty}`)
    return { standardUncertainty: Math.abs(sensitivity) * standardUncertainty, degreesOfFreedom }
  })
  return {
    standardUncertainty: Math.hypot(...shares.map((share) => share.standardUncertainty)),
    degreesOfFreedom: welchSatterthwaite(shares),
  }
}

/** ν = u⁴/Σ(uᵢ⁴/νᵢ): Welch 1947, Satterthwaite 1946; JCGM 100:2008, G.4.1. Infinity where no part has a finite ν. */
export function welchSatterthwaite(parts: readonly CombinedUncertainty[]): number {
  const variance = parts.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0)
  if (variance === 0) return Number.POSITIVE_INFINITY
  const sum = parts.reduce((total, { standardUncertainty, degreesOfFreedom }) => {
    if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${degreesOfFreedom}`)
    return total + (standardUncertainty ** 2 / variance) ** 2 / degreesOfFreedom
  }, 0)
  return 1 / sum
}

/** A mean with its type A uncertainty. */
export interface TypeA extends CombinedUncertainty {
  readonly mean: number
  readonly standardDeviation: number
}

/** Mean of independent readings and its standard uncertainty s/√n (JCGM 100:2008, 4.2). */
export function typeA(readings: ArrayLike<number>): TypeA {
  const { count, mean, standardDeviation } = summary(readings)
  if (!(count >= 2)) throw new RangeError(`type A needs at least two readings, got ${count}`)
  return {
    mean,
    standardDeviation,
    standardUncertainty: standardDeviation / Math.sqrt(count),
    degreesOfFreedom: count - 1,
  }
}
