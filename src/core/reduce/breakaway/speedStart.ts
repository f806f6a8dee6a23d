import { linearLeastSquares } from '../../numeric/index.ts'
import { correlatedProfile } from '../profile/correlatedProfile.ts'
import type { StartRows } from './startRows.ts'

/** What a start at an imposed speed shows. SI. */
export interface SpeedStartFound {
  /** Torque of the level that friction comes to, and its standard uncertainty. */
  readonly level: number
  readonly levelUncertainty: number
  /** Standard deviation of one row of torque about its level. */
  readonly deviation: number
  /** Mean of the highest rows. */
  readonly peak: number
  readonly peakRow: number
  /** Rows behind that mean. */
  readonly peakRows: number
  /** Torque per motor angle while it rises; null where it rises within too few rows. */
  readonly stiffness: { readonly value: number; readonly uncertainty: number } | null
  /** Angular acceleration at the peak and the largest before it, rad/s². */
  readonly accelerationAtPeak: number
  readonly largestAcceleration: number
  /** Share of its last speed that the motor had reached at the peak. */
  readonly speedShare: number
  readonly angleToPeak: number
  readonly rowsToPeak: number
}

/** Rows of the rise that a stiffness is read from. */
const fewestRising = 4

/** Share of a start at its end that counts as its level. */
const levelShare = 0.5

/** Level, peak, rise and acceleration of a start at an imposed speed; undefined where it has no level. */
export function speedStart({ time, torque, angle, speed }: StartRows): SpeedStartFound | undefined {
  const count = time.length
  const from = Math.floor(count * (1 - levelShare))
  const late = torque.slice(from)
  const ones = new Float64Array(late.length).fill(1)
  const fit = correlatedProfile({ response: late, columns: () => [ones], places: [[]] })
  if (fit === undefined) return undefined
  const level = fit.profile.best.coefficients[0]
  const levelUncertainty = Math.sqrt(fit.profile.variance * fit.profile.best.gram[0])
  const peakRows = Math.max(1, Math.min(3, Math.floor(count / 100)))
  const { peakRow, peak } = highest(torque.subarray(0, from), peakRows)
  const acceleration = (i: number): number => {
    const [a, b] = [Math.max(0, i - 1), Math.min(count - 1, i + 1)]
    return (speed[b] - speed[a]) / (time[b] - time[a])
  }
  let largestAcceleration = 0
  for (let i = 0; i <= peakRow; i++) largestAcceleration = Math.max(largestAcceleration, acceleration(i))
  const lastSpeed = speed.subarray(from).reduce((sum, value) => sum + value, 0) / late.length
  return {
    level,
    levelUncertainty,
    deviation: fit.deviation,
    peak,
    peakRow,
    peakRows,
    stiffness: stiffnessOf(torque, angle, { peak: Math.min(peak, level), peakRow }),
    accelerationAtPeak: acceleration(peakRow),
    largestAcceleration,
    speedShare: speed[peakRow] / lastSpeed,
    angleToPeak: angle[peakRow] - angle[0],
    rowsToPeak: peakRow,
  }
}

function highest(torque: Float64Array, width: number): { peakRow: number; peak: number } {
  let peakRow = 0
  let peak = Number.NEGATIVE_INFINITY
  for (let i = 0; i + width <= torque.length; i++) {
    let sum = 0
    for (let k = 0; k < width; k++) sum += torque[i + k]
    if (sum / width > peak) {
      peak = sum / width
      peakRow = i + (width >> 1)
    }
  }
  return { peakRow, peak }
}

/** Straight line of torque over motor angle through the rows between a tenth and nine tenths of the way up. */
function stiffnessOf(
  torque: Float64Array,
  angle: Float64Array,
  { peak, peakRow }: { peak: number; peakRow: number },
): SpeedStartFound['stiffness'] {
  const rows: number[] = []
  for (let i = 0; i <= peakRow; i++) if (torque[i] > 0.1 * peak && torque[i] < 0.9 * peak) rows.push(i)
  if (rows.length < fewestRising) return null
  const fit = linearLeastSquares(
    [rows.map(() => 1), rows.map((i) => angle[i])],
    rows.map((i) => torque[i]),
  )
  const variance = fit.residualSumOfSquares / Math.max(1, fit.degreesOfFreedom)
  const value = fit.coefficients[1]
  return value > 0 ? { value, uncertainty: Math.sqrt(variance * fit.inverseGram[3]) } : null
}
