import type { FlowLaw } from './shape.ts'

/**
 * η = Kγ̇^(n−1): n under 1 thins, over 1 thickens. Ostwald 1925, de Waele 1923. Without plateaus: holds between them only, and
 * is infinite at rest when it thins.
 */
export const powerLaw: FlowLaw = {
  parameters: [
    { name: 'consistency', unit: 'Pa·s^n', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'exponent', unit: '', least: 0, moves: 'itself' },
  ],
  source: 'Ostwald 1925, Kolloid-Z. 36:99; de Waele 1923',
  viscosity: (values, rate) => values[0] * rate ** (values[1] - 1),
  slopes: (values, rate, into) => {
    into[0] = rate ** (values[1] - 1)
    into[1] = values[0] * into[0] * Math.log(rate)
  },
  bounds: ({ viscosity, shearRate }) => [
    // K is the viscosity at 1/s, which may lie far outside the curve.
    {
      low: 1e-3 * viscosity.low * Math.min(1, shearRate.low) ** 2,
      high: 1e3 * viscosity.high * Math.max(1, shearRate.high) ** 2,
    },
    { low: 0, high: 3 },
  ],
  starts: ({ slope, atSlowest, shearRate }) => [[atSlowest * shearRate.low ** -slope, 1 + slope]],
}
