import { crossoverTimes, plateauBounds } from './plateaus.ts'
import type { FlowLaw } from './shape.ts'

/**
 * η = η∞ + (η₀ − η∞)(1 + (λγ̇)^a)^((n−1)/a): two plateaus, a power law of exponent n between, `sharpness` a of the bend (2 is
 * Carreau 1972). Yasuda, Armstrong & Cohen 1981, Rheol. Acta 20:163.
 */
export const carreauYasuda: FlowLaw = {
  parameters: [
    { name: 'restViscosity', unit: 'Pa·s', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'fastViscosity', unit: 'Pa·s', least: 0, moves: 'itself' },
    { name: 'time', unit: 's', least: Number.MIN_VALUE, moves: 'logarithm' },
    { name: 'exponent', unit: '', least: 0, moves: 'itself' },
    { name: 'sharpness', unit: '', least: 1e-3, moves: 'logarithm' },
  ],
  source: 'Carreau 1972, Trans. Soc. Rheol. 16:99; Yasuda, Armstrong & Cohen 1981, Rheol. Acta 20:163',
  viscosity: (values, rate) =>
    values[1] + (values[0] - values[1]) * (1 + (values[2] * rate) ** values[4]) ** ((values[3] - 1) / values[4]),
  slopes: (values, rate, into) => {
    const [time, exponent, sharpness] = [values[2], values[3], values[4]]
    const thinned = (time * rate) ** sharpness
    const power = (exponent - 1) / sharpness
    const part = (1 + thinned) ** power
    const fall = (values[0] - values[1]) * part
    const share = thinned / (1 + thinned)
    into[0] = part
    into[1] = 1 - part
    into[2] = (fall * (exponent - 1) * share) / time
    into[3] = (fall * Math.log1p(thinned)) / sharpness
    into[4] = fall * power * (share * Math.log(time * rate) - Math.log1p(thinned) / sharpness)
  },
  bounds: (extent) => [...plateauBounds(extent), { low: 0, high: 0.99 }, { low: 0.2, high: 10 }],
  starts: (extent) =>
    crossoverTimes(extent).flatMap((time) =>
      [0.2, 0.6].map((exponent) => [extent.atSlowest * 1.1, extent.atFastest * 0.3, time, exponent, 1.5]),
    ),
}
