import type { Kelvin, PascalSecond } from '../../terms/index.ts'
import { mustLieWithin } from '../refuse.ts'

/** Temperatures of R12-08, K; above 300 MPa its upper end falls. */
const waterFormulationTemperature = { low: 251.165, high: 1173.15 }

/** Densities up to that of water at 1000 MPa and little more, kg/m³. */
const waterFormulationDensity = { low: 0, high: 1300 }

const criticalTemperature = 647.096
const criticalDensity = 322

/** H_i of equation 11 (table 1). */
const dilute = [1.67752, 2.20462, 0.6366564, -0.241605]

/** i, j and H_ij of equation 12 (table 2); the others are zero. */
const finite: readonly (readonly [i: number, j: number, coefficient: number])[] = [
  [0, 0, 0.520094],
  [1, 0, 0.0850895],
  [2, 0, -1.08374],
  [3, 0, -0.289555],
  [0, 1, 0.222531],
  [1, 1, 0.999115],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 0.120573],
  [0, 2, -0.281378],
  [1, 2, -0.906851],
  [2, 2, -0.772479],
  [3, 2, -0.489837],
  [4, 2, -0.25704],
  [0, 3, 0.161913],
  [1, 3, 0.257399],
  [0, 4, -0.0325372],
  [3, 4, 0.0698452],
  [4, 5, 0.00872102],
  [3, 6, -0.00435673],
  [5, 6, -0.000593264],
]

/**
 * Viscosity of water and steam, Pa·s, from temperature (K) and density (kg/m³). IAPWS R12-08, Release on the IAPWS Formulation
 * 2008 for the Viscosity of Ordinary Water Substance, with the critical term 1, as it allows away from the critical point.
 * 251 to 1173 K, up to 1000 MPa; throws RangeError outside.
 */
export function waterViscosityAtDensity(temperature: Kelvin, density: number): PascalSecond {
  mustLieWithin(temperature, waterFormulationTemperature, ['temperature of water', 'K'])
  mustLieWithin(density, waterFormulationDensity, ['density of water', 'kg/m³'])
  const reduced = temperature / criticalTemperature
  const dense = density / criticalDensity
  const thin = (100 * Math.sqrt(reduced)) / dilute.reduce((sum, h, i) => sum + h / reduced ** i, 0)
  const crowd = finite.reduce((sum, [i, j, h]) => sum + h * (1 / reduced - 1) ** i * (dense - 1) ** j, 0)
  return thin * Math.exp(dense * crowd) * 1e-6
}
