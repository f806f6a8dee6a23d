import type { Span } from '../span.ts'
import type { CurveExtent } from './shape.ts'

/** Bounds of rest viscosity, fast viscosity and time of a law with two plateaus. */
export const plateauBounds = ({ viscosity, shearRate, atFastest }: CurveExtent): readonly Span[] => [
  { low: 0.3 * viscosity.high, high: 1e4 * viscosity.high },
  { low: 0, high: 1.5 * Math.min(atFastest, viscosity.low) },
  { low: 1e-3 / shearRate.high, high: 1e4 / shearRate.low },
]

/** Times of which the crossover falls slow, in the middle and fast in the curve. */
export function crossoverTimes({ shearRate: { low, high } }: CurveExtent): readonly number[] {
  return [0.1, 0.4, 0.7].map((part) => 1 / (low * (high / low) ** part))
}
