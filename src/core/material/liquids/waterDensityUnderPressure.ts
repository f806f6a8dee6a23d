import type { Kelvin, Pascal } from '../../terms/index.ts'
import { mustLieWithin } from '../refuse.ts'

/** Temperatures of region 1, K; the steam pressure must lie below the pressure, which always holds under 373 K. */
const pressedWaterTemperature = { low: 273.15, high: 623.15 }

/** Pressures of region 1, Pa, absolute. */
export const pressedWaterPressure = { low: 611.213, high: 100e6 }

/** I, J and n of table 2. */
const terms: readonly (readonly [i: number, j: number, n: number])[] = [
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
]

/**
 * Density of liquid water under pressure, kg/m³, from temperature (K) and absolute pressure (Pa). IAPWS R7-97(2012), Industrial
 * Formulation 1997, region 1, equation 7 and table 2 (terms without pressure do not count). 273.15 to 623.15 K, from the
 * pressure of its steam (not checked) to 100 MPa; throws RangeError outside.
 */
export function waterDensityUnderPressure(temperature: Kelvin, pressure: Pascal): number {
  mustLieWithin(temperature, pressedWaterTemperature, ['temperature of water', 'K'])
  mustLieWithin(pressure, pressedWaterPressure, ['absolute pressure of water', 'Pa'])
  const reduced = pressure / 16.53e6
  const inverse = 1386 / temperature
  const slope = terms.reduce((sum, [i, j, n]) => sum - n * i * (7.1 - reduced) ** (i - 1) * (inverse - 1.222) ** j, 0)
  return 16.53e6 / (461.526 * temperature * slope)
}
