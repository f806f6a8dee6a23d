import { linearLeastSquares } from '../../numeric/index.ts'
import { integratedAutocorrelationTime } from '../../stats/index.ts'
import type { Metre, Ratio } from '../../terms/index.ts'

/** A groove in a profile across a track. Areas in m². */
export interface GrooveSection {
  /** Material gone below the surface that was there before. */
  readonly area: number
  readonly uncertainty: number
  /** Pushed up beside it. */
  readonly ridges: number
  readonly width: Metre
  readonly depth: Metre
  /** Where the groove begins and ends along the profile. */
  readonly from: Metre
  readonly to: Metre
}

/** Outer share of the profile on either side that is taken as undisturbed. Ours. */
export const undisturbed: Ratio = 0.2

/**
 * Area below a straight line through the undisturbed ends, around the deepest place, out to where the profile comes back to the line.
 * The uncertainty is that of the line and of the roughness, whose readings are correlated. `position` must rise. Throws RangeError
 * for fewer than 20 places or ragged arrays.
 */
export function grooveSection(position: Float64Array, height: Float64Array): GrooveSection {
  const count = position.length
  if (!(count >= 20 && height.length === count)) {
    throw new RangeError(`profile must have 20 places or more, got ${count} positions and ${height.length} heights`)
  }
  const span = position[count - 1] - position[0]
  if (!(span > 0)) throw new RangeError(`position must rise, got a span of ${span} m`)
  const isEnd = (x: number): boolean =>
    x < position[0] + undisturbed * span || x > position[count - 1] - undisturbed * span
  const ends = Array.from(position.keys()).filter((i) => isEnd(position[i]))
  const along = (x: number): number => (x - position[0]) / span - 0.5
  const line = linearLeastSquares(
    [ends.map(() => 1), ends.map((i) => along(position[i]))],
    ends.map((i) => height[i]),
  )
  const left = height.map((z, i) => z - line.coefficients[0] - line.coefficients[1] * along(position[i]))
  const roughness = Math.sqrt(line.residualSumOfSquares / line.degreesOfFreedom)
  const tau = Math.max(1, integratedAutocorrelationTime(line.residuals).time)
  const deepest = left.reduce((best, z, i) => (z < left[best] ? i : best), 0)
  const [from, to] = [-1, 1].map((side) => edge(left, deepest, side))
  const steps = Array.from({ length: count - 1 }, (_, i) => i)
  const piece = (i: number): number => ((left[i] + left[i + 1]) / 2) * (position[i + 1] - position[i])
  const area = steps.filter((i) => i >= from && i < to).reduce((sum, i) => sum - piece(i), 0)
  const ridges = steps
    .filter((i) => (i < from || i >= to) && !isEnd(position[i]))
    .reduce((sum, i) => sum + Math.max(0, piece(i)), 0)
  const width = position[to] - position[from]
  const ofLine = width * roughness * Math.sqrt(tau * line.inverseGram[0])
  const ofRoughness = roughness * Math.sqrt((tau * width * span) / count)
  return {
    area,
    uncertainty: Math.hypot(ofLine, ofRoughness),
    ridges,
    width,
    depth: -left[deepest],
    from: position[from],
    to: position[to],
  }
}

/** First place, going out from the deepest, at which the profile is back on the line to within half a per cent of the depth. */
function edge(left: Float64Array, from: number, side: number): number {
  let at = from
  while (at + side >= 0 && at + side < left.length && left[at] < 0.005 * left[from]) at += side
  return at
}
