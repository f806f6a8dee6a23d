import type { ComparisonScale, MetrePerSecond } from '../terms/index.ts'
import type { CurveOverSpeed } from './replicateCurve.ts'

/** Values of a curve in the scale of a comparison: ln μ, whose differences are ratios, or μ. */
export const inScale = (
  curve: CurveOverSpeed,
  speeds: readonly MetrePerSecond[],
  scale: ComparisonScale,
): Float64Array =>
  Float64Array.from(speeds, (speed) =>
    scale === 'ratio' ? curve.lnFriction(speed) : Math.exp(curve.lnFriction(speed)),
  )

/** Friction of a value in the scale. */
export const inFriction = (value: number, scale: ComparisonScale): number =>
  scale === 'ratio' ? Math.exp(value) : value

/** An effect of the scale as it is told: ratio − 1, or difference of friction. */
export const inEffect = (value: number, scale: ComparisonScale): number =>
  scale === 'ratio' ? Math.expm1(value) : value

/** A margin in the scale: `10 %` means between 1/1.1 and 1.1 as a ratio, which is the same seen from either sample. */
export function inMargin(margin: number, scale: ComparisonScale): number {
  if (!(margin > 0 && margin < Number.POSITIVE_INFINITY))
    throw new RangeError(`margin must be above zero, got ${margin}`)
  return scale === 'ratio' ? Math.log1p(margin) : margin
}
