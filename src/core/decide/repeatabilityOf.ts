import { chiSquaredQuantile } from '../stats/index.ts'
import type { CurveScatter } from '../stats/judging/index.ts'
import type { Repeatability } from '../terms/index.ts'

/** Factor of the limit that two results seldom differ by: 1.96·√2, which ISO 5725-6 rounds. */
const limitFactor = 2.8

/**
 * Standard deviation between replicates from the scatter of ln μ. Over the speeds it is pooled with as many degrees of freedom as
 * the speeds tell independently: ν (tr K)²/tr K² (Box 1954), both traces without the bias that few replicates give
 * their plain estimates (Himeno & Yamada 2014, J. Multivar. Anal. 130:27). The interval is that of χ².
 */
export function repeatabilityOf(scatter: CurveScatter): Repeatability {
  const { deviation, places } = scatter
  const pooled = Math.sqrt(deviation.reduce((sum, d) => sum + d * d, 0) / places)
  const degreesOfFreedom = freedomOverSpeeds(scatter)
  const end = (share: number): number =>
    pooled * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(share, degreesOfFreedom))
  return {
    profile: [...deviation],
    ...{ pooled, degreesOfFreedom },
    low: end(0.975),
    high: end(0.025),
    limit: limitFactor * pooled,
  }
}

function freedomOverSpeeds({ residuals, places, degreesOfFreedom: nu, deviation }: CurveScatter): number {
  if (nu === 1) return 1
  const trace = deviation.reduce((sum, d) => sum + d * d, 0)
  let squares = 0
  for (const a of residuals) {
    for (const b of residuals) {
      let product = 0
      for (let i = 0; i < places; i++) product += a[i] * b[i]
      squares += (product / nu) ** 2
    }
  }
  if (!(trace > 0)) return nu
  // Both share the factor ν/((ν − 1)(ν + 2)).
  const traceSquared = (nu + 1) * (trace * trace - (2 / (nu + 1)) * squares)
  const squareTrace = nu * (squares - (trace * trace) / nu)
  const independent = squareTrace > 0 ? traceSquared / squareTrace : places
  return nu * Math.min(places, Math.max(1, independent))
}
