import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Ratio } from '../terms/index.ts'
import type { FilmNumbers } from './conditions.ts'

/** Film over radius. */
export interface ScaledFilm {
  readonly minimum: Ratio
  readonly central: Ratio
}

/**
 * Ellipticity of a contact with Ry/Rx, k = (Ry/Rx)^(2/π). The form of 1977, 1.03(Ry/Rx)^0.64, differs by 3 % for a ball and is
 * not used.
 */
export const ellipticity = (radiusRatio: Ratio): Ratio => radiusRatio ** (2 / Math.PI)

/**
 * Hard bodies: Hamrock & Dowson 1977, part III, J. Lubr. Tech. 99:264 (form of the minimum seen in print, the central one from
 * memory). Fitted to 34 cases.
 *
 * @param k ellipticity, 1 for a round contact
 */
export function hardFilm({ speed, material, load }: FilmNumbers, k: Ratio = 1): ScaledFilm {
  checkNumbers({ speed, material, load }, k)
  return {
    minimum: 3.63 * speed ** 0.68 * material ** 0.49 * load ** -0.073 * (1 - Math.exp(-0.68 * k)),
    central: 2.69 * speed ** 0.67 * material ** 0.53 * load ** -0.067 * (1 - 0.61 * Math.exp(-0.73 * k)),
  }
}

/** Soft bodies: Hamrock & Dowson 1978, J. Lubr. Tech. 100:236 (from memory). Pressure does not thicken the liquid. */
export function softFilm({ speed, material, load }: FilmNumbers, k: Ratio = 1): ScaledFilm {
  checkNumbers({ speed, material, load }, k)
  return {
    minimum: 7.43 * speed ** 0.65 * load ** -0.21 * (1 - 0.85 * Math.exp(-0.31 * k)),
    central: 7.32 * (1 - 0.72 * Math.exp(-0.28 * k)) * speed ** 0.64 * load ** -0.22,
  }
}

/** Central film of a soft round contact by another fit, 3.3 U^0.60 W^−0.14: de Vicente, Stokes & Spikes 2005 (from memory). */
export function softCentralFilmOf2005({ speed, material, load }: FilmNumbers): Ratio {
  checkNumbers({ speed, material, load }, 1)
  return 3.3 * speed ** 0.6 * load ** -0.14
}

function checkNumbers({ speed, material, load }: FilmNumbers, k: Ratio): void {
  mustNotBeNegative(speed, 'speed number U', '')
  mustNotBeNegative(material, 'material number G', '')
  mustBePositive(load, 'load number W', '')
  mustBePositive(k, 'ellipticity', '')
}
