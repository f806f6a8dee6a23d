import { fourierTransform, powerOfTwoFrom } from '../numeric/index.ts'

/** Σ d[i] d[i + lag] / n of values whose mean has been taken off. */
export function autocovarianceAt(deviations: Float64Array, lag: number): number {
  const count = deviations.length
  let sum = 0
  for (let i = lag; i < count; i++) sum += deviations[i] * deviations[i - lag]
  return sum / count
}

/** Autocovariances at lags 0 to `most` by way of the spectrum (Wiener & Khinchin), in n log n time. */
export function autocovariances(deviations: Float64Array, most: number): Float64Array {
  const count = deviations.length
  const size = powerOfTwoFrom(count + most + 1)
  const real = new Float64Array(size)
  const imaginary = new Float64Array(size)
  real.set(deviations)
  fourierTransform(real, imaginary)
  for (let k = 0; k < size; k++) {
    real[k] = real[k] ** 2 + imaginary[k] ** 2
    imaginary[k] = 0
  }
  // The power is even in frequency, so that a second forward transform serves as the inverse.
  fourierTransform(real, imaginary)
  return real.subarray(0, most + 1).map((sum) => sum / (size * count))
}
