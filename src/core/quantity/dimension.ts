/**
 * What a quantity measures. A unit may have several readings (K: a temperature or a difference of two).
 * `count` is a whole number of things, `ratio` any other plain number.
 */
export const dimensions = [
  'time',
  'length',
  'area',
  'volume',
  'mass',
  'angle',
  'angularVelocity',
  'frequency',
  'velocity',
  'force',
  'torque',
  'temperature',
  'temperatureDifference',
  'pressure',
  'viscosity',
  'kinematicViscosity',
  'momentOfInertia',
  'torsionalStiffness',
  'wearRate',
  'ratio',
  'count',
] as const

/** One of `dimensions`. */
export type Dimension = (typeof dimensions)[number]

/** Exponents of m, kg, s, K and rad. The radian counts as a base unit so that rad/s and 1/s stay apart. */
export type Exponents = readonly [number, number, number, number, number]

/** Dimensions told by their exponents alone, and the SI unit in which the program keeps them. */
export const dimensionTable: Readonly<
  Record<Dimension, { readonly si: string; readonly exponents: readonly Exponents[] }>
> = {
  time: { si: 's', exponents: [[0, 0, 1, 0, 0]] },
  length: { si: 'm', exponents: [[1, 0, 0, 0, 0]] },
  area: { si: 'm²', exponents: [[2, 0, 0, 0, 0]] },
  volume: { si: 'm³', exponents: [[3, 0, 0, 0, 0]] },
  mass: { si: 'kg', exponents: [[0, 1, 0, 0, 0]] },
  angle: { si: 'rad', exponents: [[0, 0, 0, 0, 1]] },
  angularVelocity: { si: 'rad/s', exponents: [[0, 0, -1, 0, 1]] },
  frequency: { si: 'Hz', exponents: [[0, 0, -1, 0, 0]] },
  velocity: { si: 'm/s', exponents: [[1, 0, -1, 0, 0]] },
  force: { si: 'N', exponents: [[1, 1, -2, 0, 0]] },
  torque: { si: 'N·m', exponents: [[2, 1, -2, 0, 0]] },
  temperature: { si: 'K', exponents: [[0, 0, 0, 1, 0]] },
  temperatureDifference: { si: 'K', exponents: [[0, 0, 0, 1, 0]] },
  pressure: { si: 'Pa', exponents: [[-1, 1, -2, 0, 0]] },
  viscosity: { si: 'Pa·s', exponents: [[-1, 1, -1, 0, 0]] },
  kinematicViscosity: { si: 'm²/s', exponents: [[2, 0, -1, 0, 0]] },
  // N·m·s² is kg·m²; the same per radian is how a torque balance in rad/s² writes it.
  momentOfInertia: {
    si: 'kg·m²',
    exponents: [
      [2, 1, 0, 0, 0],
      [2, 1, 0, 0, -1],
    ],
  },
  torsionalStiffness: { si: 'N·m/rad', exponents: [[2, 1, -2, 0, -1]] },
  // Worn volume per load and distance.
  wearRate: { si: 'm³/(N·m)', exponents: [[1, -1, 2, 0, 0]] },
  ratio: { si: '1', exponents: [[0, 0, 0, 0, 0]] },
  count: { si: '1', exponents: [] },
}
