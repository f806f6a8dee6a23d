import { autocovarianceAt, autocovariances } from './autocovariance.ts'
import { deviationsOf } from './deviations.ts'

/** How long a record remembers. */
export interface AutocorrelationTime {
  /** τ = 1 + 2Σρ in samples: the variance of the mean is that of τ times fewer independent samples. */
  readonly time: number
  /** Standard error of `time` (Wolff 2004, Comput. Phys. Commun. 156:143, eq. 42). */
  readonly standardError: number
  /** Largest lag in the sum. */
  readonly window: number
  /** False where the record is too short to hold the window; `time` is then too low. */
  readonly windowFound: boolean
}

// Up to here lags are summed one by one, beyond by way of the spectrum, which costs about as much as this many lags.
const directLags = 64
// The running sum swings when neighbours oppose each other; fewer lags than this would stop it at the first swing.
const fewestLags = 4

/**
 * Integrated autocorrelation time with the self-consistent window of Sokal (1989, lecture notes; Madras & Sokal 1988): the
 * smallest W with W ≥ c(½ + Σρ) = cτ/2, at least 4 and at most a quarter of the record. Because the sample mean was taken off, each
 * autocovariance is low by the variance of the mean; that is given back to first order, as Wolff 2004 eq. 49 does:
 * τ = τ̂/(1 − (2W + 1 − τ̂)/n). An AR(1) record with coefficient φ has τ = (1 + φ)/(1 − φ).
 *
 * Trap: many papers call ½ + Σρ, half of this, the autocorrelation time. A record without scatter gets τ = 1.
 */
export function integratedAutocorrelationTime(values: ArrayLike<number>, c = 5): AutocorrelationTime {
  const count = values.length
  if (!(count >= 2)) throw new RangeError(`autocorrelation needs at least two values, got ${count}`)
  if (!(c > 0)) throw new RangeError(`the window factor must be above zero, got ${c}`)
  const { deviations } = deviationsOf(values)
  const variance = autocovarianceAt(deviations, 0)
  if (!(variance > 0)) return { time: 1, standardError: 0, window: 0, windowFound: true }
  const most = Math.max(1, Math.floor(count / 4))
  const fewest = Math.min(fewestLags, most)
  let bySpectrum: Float64Array | undefined
  let raw = 1
  let window = 0
  let windowFound = false
  while (!windowFound && window < most) {
    window++
    if (window > directLags) bySpectrum ??= autocovariances(deviations, most)
    raw += (2 * (bySpectrum?.[window] ?? autocovarianceAt(deviations, window))) / variance
    windowFound = window >= fewest && window >= (c * raw) / 2
  }
  const time = Math.max(raw / (1 - (2 * window + 1 - raw) / count), 1 / count)
  const share = (4 / count) * Math.max(window + 0.5 - time / 2, 0.5)
  return { time, standardError: time * Math.sqrt(share), window, windowFound }
}

/** Autocorrelations ρ at lags 0 to `most`: autocovariances about the mean with divisor n, over that at lag 0. */
export function autocorrelations(values: ArrayLike<number>, most: number): Float64Array {
  if (!(Number.isInteger(most) && most >= 0 && most < values.length)) {
    throw new RangeError(`lags must be from 0 to one less than the ${values.length} values, got ${most}`)
  }
  const { deviations } = deviationsOf(values)
  const covariances =
    most > directLags
      ? autocovariances(deviations, most)
      : Float64Array.from({ length: most + 1 }, (_, lag) => autocovarianceAt(deviations, lag))
  return covariances.map((covariance) => covariance / covariances[0])
}
