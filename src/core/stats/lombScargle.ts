import { deviationsOf } from './deviations.ts'

/** Power at each frequency asked for. */
export interface Periodogram {
  /** Half the fall in the sum of squares when a sinusoid of that frequency is fitted (Scargle 1982). */
  readonly power: Float64Array
  /** Share of the sum of squares about the mean that the sinusoid explains, 0 to 1. */
  readonly explained: Float64Array
}

/**
 * Periodogram of unevenly sampled readings (Lomb 1976; Scargle 1982, Astrophys. J. 263:835), mean taken off, in the unit of y squared. At the Fourier
 * frequencies of even sampling it is |DFT|²/N. Time grows with readings times frequencies.
 *
 * @param frequencies in cycles per unit of t, above zero
 */
export function lombScargle(t: ArrayLike<number>, y: ArrayLike<number>, frequencies: ArrayLike<number>): Periodogram {
  if (!(t.length >= 2 && t.length === y.length)) {
    throw new RangeError(`lombScargle needs two equally long lists of two or more, got ${t.length} and ${y.length}`)
  }
  const { deviations } = deviationsOf(y)
  const total = deviations.reduce((sum, d) => sum + d * d, 0)
  const power = Float64Array.from(frequencies, (frequency) => {
    if (!(frequency > 0)) throw new RangeError(`frequencies must be above zero, got ${frequency}`)
    return powerAt(t, deviations, 2 * Math.PI * frequency)
  })
  return { power, explained: power.map((p) => (2 * p) / total) }
}

function powerAt(t: ArrayLike<number>, deviations: Float64Array, angular: number): number {
  const count = t.length
  const start = t[0] // a common shift of all times changes nothing; small angles keep their digits
  let cosYes = 0
  let sinYes = 0
  let cos2 = 0
  let sin2 = 0
  for (let i = 0; i < count; i++) {
    const angle = angular * (t[i] - start)
    const c = Math.cos(angle)
    const s = Math.sin(angle)
    cosYes += deviations[i] * c
    sinYes += deviations[i] * s
    cos2 += c * c - s * s
    sin2 += 2 * c * s
  }
  // τ makes the sine and the cosine orthogonal over the sampling.
  const turn = Math.atan2(sin2, cos2) / 2
  const spread = Math.hypot(sin2, cos2)
  const c = Math.cos(turn)
  const s = Math.sin(turn)
  const cosine = cosYes * c + sinYes * s
  const sine = sinYes * c - cosYes * s
  const cosSquares = (count + spread) / 2
  const sinSquares = (count - spread) / 2
  // At the Nyquist frequency of even sampling the sine vanishes and explains nothing.
  const bySine = sinSquares > 1e-12 * count ? (sine * sine) / sinSquares : 0
  return 0.5 * ((cosine * cosine) / cosSquares + bySine)
}

/**
 * Probability that the highest of `frequencies` independent powers of white noise of known variance σ² exceeds
 * `power`/σ²: 1 − (1 − e^(−z))^M (Scargle 1982).
 */
export const falseAlarmKnownVariance = (powerOverVariance: number, frequencies: number): number =>
  anyOf(Math.exp(-powerOverVariance), frequencies)

/**
 * The same where the variance comes from the readings: a single share p of the sum of squares is exceeded with probability
 * (1 − p)^((n − 3)/2) (Zechmeister & Kürster 2009, Astron. Astrophys. 496:577, table 1).
 */
export function falseAlarm(
  explained: number,
  { readings, frequencies }: { readonly readings: number; readonly frequencies: number },
): number {
  if (!(explained >= 0 && explained <= 1)) throw new RangeError(`share must lie between 0 and 1, got ${explained}`)
  if (!(readings > 3)) throw new RangeError(`a false alarm needs more than three readings, got ${readings}`)
  return anyOf((1 - explained) ** ((readings - 3) / 2), frequencies)
}

/** 1 − (1 − p)^M, also where p is tiny. */
function anyOf(single: number, frequencies: number): number {
  if (!(frequencies >= 1)) throw new RangeError(`independent frequencies must be at least one, got ${frequencies}`)
  return -Math.expm1(frequencies * Math.log1p(-single))
}
