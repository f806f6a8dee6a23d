import { monotoneInterpolant } from '../../numeric/index.ts'
import type { Kelvin, PascalSecond } from '../../terms/index.ts'
import type { KnownValue } from '../knownValue.ts'
import { checkedLiquid } from './checkedLiquid.ts'
import type { Liquid } from './liquid.ts'
import { roelandsPressure, underPressure } from './underPressure.ts'

/** A viscosity that a user measured. */
export interface MeasuredViscosity {
  readonly temperature: Kelvin
  readonly viscosity: PascalSecond
  /** Standard uncertainty, if known. */
  readonly viscosityUncertainty?: PascalSecond
}

/** A liquid of which a user knows the viscosity at one temperature or several. */
export interface MeasuredParts {
  readonly name: string
  readonly source: string
  /** Rising temperatures. */
  readonly points: readonly MeasuredViscosity[]
  /** kg/m³, if known. */
  readonly density: number | null
  readonly pressureCoefficient: KnownValue | null
}

/** How far one lone measurement is believed, K: viscosities change by some percent per kelvin. */
export const loneTolerance: Kelvin = 1

/**
 * A liquid from a user's own viscosities: ln η over 1/T, monotone between the points (two of them: Arrhenius), refused outside;
 * one alone is believed within 1 K. The uncertainty is the larger of the two beside.
 */
export function measuredLiquid({ name, source, points, density, pressureCoefficient }: MeasuredParts): Liquid {
  const lone = points.length === 1
  const first = points[0].temperature
  const last = points[points.length - 1].temperature
  const curve = lone
    ? () => Math.log(points[0].viscosity)
    : monotoneInterpolant(
        points.map(({ temperature }) => -1 / temperature),
        points.map(({ viscosity }) => Math.log(viscosity)),
      )
  return checkedLiquid({
    name,
    seen: 'own',
    temperature: lone ? { low: first - loneTolerance, high: first + loneTolerance } : { low: first, high: last },
    pressure: pressureCoefficient === null ? { low: 0, high: 0 } : roelandsPressure,
    shearRate: null,
    pressureCoefficient,
    viscosityAt: ({ temperature, pressure }) => {
      const viscosity = Math.exp(curve(-1 / temperature))
      const relative = relativeUncertainty(points, temperature)
      const plain = {
        viscosity,
        viscosityUncertainty: relative === null ? null : relative * viscosity,
        law: lone ? 'one measured viscosity' : 'measured viscosities, ln η over 1/T',
        source,
        valid: lone ? 'Within 1 K of the measurement.' : 'Between the temperatures measured.',
        doubts: [],
      }
      return pressureCoefficient === null ? plain : underPressure(plain, pressureCoefficient, pressure)
    },
    densityAt:
      density === null
        ? null
        : () => ({
            density,
            law: 'one density',
            source,
            valid: 'Near the temperature at which it was taken.',
            doubts: [],
          }),
  })
}

function relativeUncertainty(points: readonly MeasuredViscosity[], temperature: Kelvin): number | null {
  const after = points.findIndex((point) => point.temperature >= temperature)
  const beside = points.filter((_, i) => (after < 0 ? i === points.length - 1 : i === after || i === after - 1))
  const shares = beside.flatMap(({ viscosity, viscosityUncertainty }) =>
    viscosityUncertainty === undefined ? [] : [viscosityUncertainty / viscosity],
  )
  return shares.length < beside.length ? null : Math.max(...shares)
}
