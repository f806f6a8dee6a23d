import type { FlowLaw } from './shape.ts'

/** One viscosity at every rate. */
export const newtonian: FlowLaw = {
  parameters: [{ name: 'viscosity', unit: 'Pa·s', least: Number.MIN_VALUE, moves: 'logarithm' }],
  source: 'Newton 1687, Principia, book 2, section 9',
  viscosity: (values) => values[0],
  slopes: (_values, _rate, into) => {
    into[0] = 1
  },
  bounds: ({ viscosity }) => [{ low: viscosity.low / 10, high: viscosity.high * 10 }],
  starts: ({ viscosity }) => [[Math.sqrt(viscosity.low * viscosity.high)]],
}
