import { crossoverTimes, plateauBounds } from './plateaus.ts'
import type { FlowLaw } from './shape.ts'

/**
 * η = η∞ + (η₀ − η∞)/(1 + (λγ̇)^m): two plateaus and a power law of exponent 1 − m between. Cross 1965, J. Colloid Sci. 20:417.
 */
export const cross: FlowLaw = {
  parameters: [
    { name: 'restViscosity', unit: 'Pa·s', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'fastViscosity', unit: 'Pa·s', least: 0, moves: 'itself' },
    { name: 'time', unit: 's', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'exponent', unit: '', least: 0, moves: 'itself' },
  ],
  source: 'Cross 1965, J. Colloid Sci. 20:417',
  viscosity: (values, rate) => values[1] + (values[0] - values[1]) / (1 + (values[2] * rate) ** values[3]),
  slopes: (values, rate, into) => {
    const thinned = (values[2] * rate) ** values[3]
    const part = 1 / (1 + thinned)
    const fall = (values[0] - values[1]) * part * part * thinned
    into[0] = part
    into[1] = 1 - part
    into[2] = (-fall * values[3]) / values[2]
    into[3] = -fall * Math.log(values[2] * rate)
  },
  bounds: (extent) => [...plateauBounds(extent), { low: 0.05, high: 3 }],
  starts: (extent) =>
    crossoverTimes(extent).flatMap((time) =>
      [0.5, 0.9].map((exponent) => [extent.atSlowest * 1.2, extent.atFastest * 0.3, time, exponent]),
    ),
}
