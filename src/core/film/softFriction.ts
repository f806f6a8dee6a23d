import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import { doubtAbove, doubtsFound, type Explained, type Ratio } from '../terms/index.ts'
import type { FilmNumbers } from './conditions.ts'
import { ellipticity, softFilm } from './filmForms.ts'
import { thickestFilm } from './filmThickness.ts'

/** Slide-to-roll ratio where one body stands still against the contact. */
export const pureSlidingRatio: Ratio = 2

/** The two terms of `softShearFriction`, each factor·U^speedPower·W^loadPower: a plane of speeds and loads takes its powers once a line. */
export const softShearTerms = [
  { factor: 3.8, speedPower: 0.71, loadPower: -0.76 },
  { factor: 0.96, speedPower: 0.36, loadPower: -0.11 },
] as const

const [steep, flat] = softShearTerms

/** Share of friction that shears the film, SRR·(3.8 U^0.71 W^−0.76 + 0.96 U^0.36 W^−0.11). For inner loops. */
export function softShearFriction({ speed, load }: FilmNumbers, slideRollRatio: Ratio = pureSlidingRatio): Ratio {
  checkSoft(speed, load)
  mustNotBeNegative(slideRollRatio, 'slide-to-roll ratio', '')
  return (
    slideRollRatio *
    (steep.factor * speed ** steep.speedPower * load ** steep.loadPower +
      flat.factor * speed ** flat.speedPower * load ** flat.loadPower)
  )
}

/** Share of friction that draws liquid in, 1.46 U^0.65 W^−0.70. For inner loops. */
export function softRollingFriction({ speed, load }: FilmNumbers): Ratio {
  checkSoft(speed, load)
  return 1.46 * speed ** 0.65 * load ** -0.7
}

/** Friction of a full film between soft bodies. */
export interface SoftFilmFriction extends Explained {
  readonly shear: Ratio
  readonly rolling: Ratio
  /** What the standing body feels at its surface, shear less rolling. */
  readonly standingSide: Ratio
  /** What the moving body feels, shear plus rolling. */
  readonly movingSide: Ratio
}

/**
 * Friction of a full film in a soft round contact. The sides differ because pressure, too, has a part along the film; a rig reads
 * that part with one of them, so the truth lies between the two.
 */
export function softFilmFriction(numbers: FilmNumbers, slideRollRatio: Ratio = pureSlidingRatio): SoftFilmFriction {
  const shear = softShearFriction(numbers, slideRollRatio)
  const rolling = softRollingFriction(numbers)
  return {
    shear,
    rolling,
    standingSide: shear - rolling,
    movingSide: shear + rolling,
    law: 'de Vicente, Stokes and Spikes, isoviscous–elastic film',
    source:
      'de Vicente, Stokes & Spikes 2005, Tribol. Lett. 20:273 (signs and definitions seen, coefficients from memory)',
    valid:
      'A full film (λ well over 1) of a Newtonian liquid between soft, smooth bodies; nothing is said of mixed or boundary ' +
      'friction. The second shear term is the least certain.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'filmTooThick',
        seen: softFilm(numbers, ellipticity(1)).central,
        limit: thickestFilm,
        say: (seen, limit) =>
          `The film would be ${seen} of the radius, over ${limit}: too thick for a soft-contact law.`,
      }),
      doubtAbove({
        kind: 'lawsDiffer',
        seen: shear > 0 ? rolling / shear : 0,
        limit: 0.1,
        say: (seen) => `Rolling is ${seen} of the shear part: which side of the film the rig reads matters.`,
      }),
    ),
  }
}

function checkSoft(speed: Ratio, load: Ratio): void {
  mustNotBeNegative(speed, 'speed number U', '')
  mustBePositive(load, 'load number W', '')
}
