import type { MasterPoint } from '../../core/curve/index.ts'
import type { MetrePerSecond, Point } from '../../core/terms/index.ts'

/** Trusted points on an axis that is the speed times a factor, the same for all or by the speed. */
export const masterPoints = (
  points: readonly Point[],
  factor: number | ((speed: MetrePerSecond) => number),
): readonly MasterPoint[] =>
  points.flatMap(({ trusted, slidingSpeed, friction, ownUncertainty, degreesOfFreedom }) => {
    if (!trusted || !(slidingSpeed > 0) || friction === null || !(friction > 0) || ownUncertainty === null) return []
    const by = typeof factor === 'number' ? factor : factor(slidingSpeed)
    const hersey = by * slidingSpeed
    if (!(hersey > 0)) return []
    return [{ hersey, friction, ownUncertainty, degreesOfFreedom: degreesOfFreedom ?? Number.POSITIVE_INFINITY }]
  })
