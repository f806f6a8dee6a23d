import { randomFrom } from '../../../src/core/numeric/index.ts'

/** A stationary AR(1) record of unit variance. */
export function autoregression(coefficient: number, count: number, seed: number): Float64Array {
  const random = randomFrom(seed)
  const values = new Float64Array(count)
  const innovation = Math.sqrt(1 - coefficient * coefficient)
  values[0] = random.normal()
  for (let i = 1; i < count; i++) values[i] = coefficient * values[i - 1] + innovation * random.normal()
  return values
}
