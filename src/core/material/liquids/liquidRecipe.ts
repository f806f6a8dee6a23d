import type { Kelvin, Ratio } from '../../terms/index.ts'
import type { FlowParameters } from '../flow/flowLaw.ts'
import type { FlowLawName } from '../flow/shape.ts'
import type { Span } from '../span.ts'
import type { MeasuredViscosity } from './measuredLiquid.ts'
import type { LiquidFamily } from './pressureCoefficients.ts'
import type { KinematicPoint } from './walther.ts'

/** What a user may know of an own liquid beside its viscosity. */
interface OwnLiquid {
  readonly name: string
  /** Where the numbers come from: a record, a sheet, a person. */
  readonly source: string
  /** kg/m³ */
  readonly density?: number
  /** Kind of liquid, from which a usual pressure–viscosity coefficient follows. */
  readonly family?: LiquidFamily
  /** Measured pressure–viscosity coefficient, 1/Pa; goes before `family`. */
  readonly pressureCoefficient?: number
}

/** A liquid as plain data, SI, as it is kept and sent; `liquidFrom` makes it able to answer. */
export type LiquidRecipe =
  | { readonly kind: 'water' }
  | { readonly kind: 'glycerolWater'; readonly massFraction: Ratio }
  | { readonly kind: 'mineralOil'; readonly grade: number }
  | { readonly kind: 'squalane' }
  /** Grade in m²/s at 25 °C. */
  | { readonly kind: 'siliconeOil'; readonly grade: number }
  /** Two kinematic viscosities; the density (here a must) at `densityTemperature`, or at the colder point. */
  | (OwnLiquid & {
      readonly kind: 'oil'
      readonly points: readonly [KinematicPoint, KinematicPoint]
      readonly relativeUncertainty?: Ratio
      readonly densityTemperature?: Kelvin
      /** Relative fall of density per kelvin; 7e-4 where it is not given. */
      readonly expansion?: number
      /** K; from 40 K under the colder to 20 K over the hotter point where it is not given. */
      readonly temperature?: Span
    })
  | (OwnLiquid & { readonly kind: 'measured'; readonly points: readonly MeasuredViscosity[] })
  | (OwnLiquid & {
      readonly kind: 'flowCurve'
      readonly law: FlowLawName
      readonly parameters: FlowParameters
      readonly temperature: Kelvin
      readonly shearRate: Span
      /** Answer beyond the measured rates, with a doubt. */
      readonly beyond?: boolean
      readonly relativeUncertainty?: Ratio
    })

/** Kind of a recipe. */
export type LiquidKind = LiquidRecipe['kind']
