import { doubtAbove, doubtsFound, type Explained, type Newton, type Pascal, type Ratio } from '../terms/index.ts'
import { largestShear } from './axisStress.ts'
import { hertzPeakPressure, hertzRadius } from './hertz.ts'
import { mustBePositive } from './refuse.ts'
import { largeStrain } from './sphereDoubts.ts'
import { checkSphere, type SphereOnFlat } from './sphereOnFlat.ts'

/** A body that may yield. */
export interface YieldingBody {
  readonly name: string
  /** In simple tension; ceramics and glasses crack instead, see `edgeTension`. */
  readonly yieldStrength: Pascal
  readonly poissonRatio: Ratio
}

/**
 * Peak pressure at which a body first yields below the surface: p₀/Y = ½/(largest shear/p₀), 1.61 for ν = 0.3 (the handbooks
 * round to 1.60), 1.88 for ν = 0.5. Tresca and von Mises agree on the axis. Johnson 1985, §6.1.
 */
export function firstYieldPressure(yieldStrength: Pascal, poissonRatio: Ratio): Pascal {
  mustBePositive(yieldStrength, 'yield strength', 'Pa')
  return (0.5 / largestShear(poissonRatio).shear) * yieldStrength
}

/** Load at which the peak pressure reaches `yieldPressure`: F = π³R²p³/(6E*²). Johnson 1985, eq. 6.10. */
export function firstYieldLoad(yieldPressure: Pascal, { radius, effectiveModulus }: SphereOnFlat): Newton {
  mustBePositive(yieldPressure, 'yield pressure', 'Pa')
  checkSphere(radius, effectiveModulus)
  return (Math.PI ** 3 * radius ** 2 * yieldPressure ** 3) / (6 * effectiveModulus ** 2)
}

/** Which body yields first, and when. */
export interface FirstYield extends Explained {
  readonly body: string
  readonly yieldPressure: Pascal
  readonly yieldLoad: Newton
  /** Peak pressure at the load over that of first yield; over 1 the body is dented. */
  readonly share: Ratio
}

/** First yield of the weaker of the bodies at a load. Friction brings yield nearer to the surface and, over about 0.3, onto it. */
export function firstYield(load: Newton, sphere: SphereOnFlat, bodies: readonly YieldingBody[]): FirstYield {
  const pressures = bodies.map(({ yieldStrength, poissonRatio }) => firstYieldPressure(yieldStrength, poissonRatio))
  const yieldPressure = Math.min(...pressures)
  const weaker = bodies[pressures.indexOf(yieldPressure)]
  if (weaker === undefined) throw new RangeError('bodies must hold at least one, got none')
  const { radius, effectiveModulus } = sphere
  const share = hertzPeakPressure(load, radius, effectiveModulus) / yieldPressure
  return {
    body: weaker.name,
    yieldPressure,
    yieldLoad: firstYieldLoad(yieldPressure, sphere),
    share,
    law: 'first yield below a Hertzian contact',
    source: 'Johnson 1985, Contact Mechanics, §6.1 and eq. 6.10 (from memory; stresses recomputed for this ν)',
    valid:
      'Elastic up to yield, smooth, friction below about 0.3; a hard coating, a hardened skin or a brittle body fail in other ways.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'yields',
        seen: share,
        limit: 1,
        say: (seen) =>
          `The peak pressure is ${seen} times that at which ${weaker.name} first yields: expect a lasting dent or a ploughed track.`,
      }),
      largeStrain(hertzRadius(load, radius, effectiveModulus), radius),
    ),
  }
}
