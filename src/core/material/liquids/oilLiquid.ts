import { doubtsFound, type Kelvin, type Ratio } from '../../terms/index.ts'
import type { KnownValue, Seen } from '../knownValue.ts'
import type { Span } from '../span.ts'
import { checkedLiquid } from './checkedLiquid.ts'
import type { Liquid } from './liquid.ts'
import { beyondNewtonian } from './newtonianLimit.ts'
import { roelandsPressure, underPressure } from './underPressure.ts'
import { type KinematicPoint, waltherLine, waltherRange, waltherTemperature, waltherViscosity } from './walther.ts'

/** Density (kg/m³) at a temperature (K) and its relative fall per kelvin. */
export interface OilDensity {
  readonly density: number
  readonly temperature: Kelvin
  readonly expansion: number
}

/** An oil as two kinematic viscosities and a density. */
export interface OilParts {
  readonly name: string
  readonly seen: Seen
  readonly source: string
  readonly points: readonly [KinematicPoint, KinematicPoint]
  /** Relative standard uncertainty of each of the two; null where nobody states one. */
  readonly uncertainties: readonly [Ratio, Ratio] | null
  readonly density: OilDensity
  readonly temperature: Span
  readonly pressureCoefficient: KnownValue | null
}

/** Stress to which oils of small molecules keep their viscosity, Pa: order of size, from memory. */
const newtonianStress = 1e6

/** An oil by Walther's line (ASTM D341) between and somewhat beyond two temperatures. */
export function oilLiquid(parts: OilParts): Liquid {
  const line = waltherLine(...parts.points)
  const { pressureCoefficient } = parts
  return checkedLiquid({
    name: parts.name,
    seen: parts.seen,
    // Under 2 mm²/s the form with 0.7 ends.
    temperature: {
      low: parts.temperature.low,
      high: Math.min(parts.temperature.high, waltherTemperature(line, waltherRange.low)),
    },
    pressure: pressureCoefficient === null ? { low: 0, high: 0 } : roelandsPressure,
    shearRate: null,
    pressureCoefficient,
    viscosityAt: ({ temperature, shearRate, pressure }) => {
      const viscosity = waltherViscosity(line, temperature) * densityOf(parts.density, temperature)
      const relative = relativeUncertainty(parts, temperature)
      const plain = {
        viscosity,
        viscosityUncertainty: relative === null ? null : relative * viscosity,
        law: 'Walther',
        source: `ASTM D341 through two points: ${parts.source}`,
        valid: 'Plain oils of 2 mm²/s and more, above cloud point and below decomposition.',
        doubts: doubtsFound(beyondNewtonian(viscosity * shearRate, newtonianStress)),
      }
      return pressureCoefficient === null ? plain : underPressure(plain, pressureCoefficient, pressure)
    },
    densityAt: (temperature) => ({
      density: densityOf(parts.density, temperature),
      law: 'linear expansion',
      source: parts.source,
      valid: 'A straight line through one density; good to half a percent within 60 K of it.',
      doubts: [],
    }),
  })
}

const densityOf = ({ density, temperature, expansion }: OilDensity, at: Kelvin): number =>
  density * (1 - expansion * (at - temperature))

/** Each point moved by its uncertainty, the two independent; the line carries them to other temperatures. */
function relativeUncertainty({ points, uncertainties }: OilParts, temperature: Kelvin): Ratio | null {
  if (uncertainties === null) return null
  const [first, second] = points
  const at = (a: number, b: number): number =>
    waltherViscosity(
      waltherLine({ ...first, viscosity: first.viscosity * a }, { ...second, viscosity: second.viscosity * b }),
      temperature,
    )
  const [u, v] = uncertainties
  const middle = at(1, 1)
  return Math.hypot(at(1 + u, 1) - at(1 - u, 1), at(1, 1 + v) - at(1, 1 - v)) / (2 * middle)
}
