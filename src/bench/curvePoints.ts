import type { CurvePoint } from '../core/curve/index.ts'
import type { Point } from '../core/terms/index.ts'

/** The points that may carry a curve: trusted, with a friction above zero and an uncertainty. */
export function curvePoints(points: readonly Point[]): CurvePoint[] {
  return points.flatMap(({ trusted, slidingSpeed, friction, ownUncertainty, degreesOfFreedom }) =>
    trusted && slidingSpeed > 0 && friction !== null && friction > 0 && ownUncertainty !== null
      ? [{ slidingSpeed, friction, ownUncertainty, degreesOfFreedom: degreesOfFreedom ?? Number.POSITIVE_INFINITY }]
      : [],
  )
}
