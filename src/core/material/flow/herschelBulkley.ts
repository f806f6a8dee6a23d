import type { FlowLaw } from './shape.ts'

/**
 * η = τ_y/γ̇ + Kγ̇^(n−1): a body under the yield stress, a power law over it. Herschel & Bulkley 1926, Kolloid-Z. 39:291.
 * Infinite at rest.
 */
export const herschelBulkley: FlowLaw = {
  parameters: [
    { name: 'yieldStress', unit: 'Pa', least: 0, moves: 'itself' },
    { name: 'consistency', unit: 'Pa·s^n', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'exponent', unit: '', least: 0, moves: 'itself' },
  ],
  source: 'Herschel & Bulkley 1926, Kolloid-Z. 39:291',
  viscosity: (values, rate) => values[0] / rate + values[1] * rate ** (values[2] - 1),
  slopes: (values, rate, into) => {
    into[0] = 1 / rate
    into[1] = rate ** (values[2] - 1)
    into[2] = values[1] * into[1] * Math.log(rate)
  },
  bounds: ({ viscosity, shearRate, shearStress }) => [
    // A little over the lowest stress: scatter may have put that point too low.
    { low: 0, high: 1.5 * shearStress.low },
    {
      low: 1e-6 * viscosity.low * Math.min(1, shearRate.low) ** 2,
      high: 1e3 * viscosity.high * Math.max(1, shearRate.high) ** 2,
    },
    { low: 0, high: 3 },
  ],
  starts: ({ shearStress, shearRate }) =>
    [0, 0.5, 0.9].flatMap((share) =>
      [0.4, 0.7, 1].map((exponent) => {
        const yieldStress = share * shearStress.low
        return [yieldStress, (shearStress.high - yieldStress) / shearRate.high ** exponent, exponent]
      }),
    ),
}
