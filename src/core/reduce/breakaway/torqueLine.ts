import { type LinearFit, linearLeastSquares } from '../../numeric/index.ts'
import { meanInflationSeen } from './meanInflationSeen.ts'
import type { StartRows } from './startRows.ts'

/** Torque of a ramp over time. */
export interface TorqueLine {
  /** N·m at a time. */
  readonly at: (time: number) => number
  readonly uncertainty: (time: number) => number
  readonly rate: number
  readonly slope: (time: number) => number
}

/** Torque as a parabola in time over the rows up to one, so that its noise is averaged. */
export function torqueLine({ time, torque }: StartRows, to: number): TorqueLine {
  const count = Math.max(4, to + 1)
  const origin = time[0]
  const span = Math.max(time[Math.min(count, time.length) - 1] - origin, Number.MIN_VALUE)
  const u = Float64Array.from(time.subarray(0, count), (t) => (t - origin) / span)
  const columns = [u.map(() => 1), u, u.map((x) => x * x)]
  const response = torque.subarray(0, u.length)
  const whole = linearLeastSquares(columns, response)
  const bare = linearLeastSquares(columns.slice(0, 2), response)
  // A ramp is straight unless its torque clearly bends: the parabola costs uncertainty at its end.
  const bend = whole.coefficients[2] ** 2 > 16 * whole.inverseGram[8] * varianceOf(whole)
  const fit = bend ? whole : bare
  const size = bend ? 3 : 2
  const variance = varianceOf(fit)
  const powers = (t: number): number[] => {
    const x = (t - origin) / span
    return bend ? [1, x, x * x] : [1, x]
  }
  return {
    at: (t) => powers(t).reduce((sum, p, i) => sum + p * fit.coefficients[i], 0),
    uncertainty: (t) => {
      const p = powers(t)
      let sum = 0
      for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) sum += p[i] * fit.inverseGram[i * size + j] * p[j]
      return Math.sqrt(variance * sum)
    },
    rate: fit.coefficients[1] / span,
    slope: (t) => (fit.coefficients[1] + (bend ? 2 * fit.coefficients[2] * ((t - origin) / span) : 0)) / span,
  }
}

const varianceOf = (fit: LinearFit): number =>
  (meanInflationSeen(fit.residuals) * fit.residualSumOfSquares) / Math.max(1, fit.degreesOfFreedom)
