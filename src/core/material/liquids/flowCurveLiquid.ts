import { type Doubt, doubtAbove, doubtBelow, doubtsFound, type Kelvin, type Ratio } from '../../terms/index.ts'
import { type FlowParameters, flowFunction, flowLaws } from '../flow/flowLaw.ts'
import type { FlowLawName } from '../flow/shape.ts'
import type { KnownValue } from '../knownValue.ts'
import type { Span } from '../span.ts'
import { checkedLiquid } from './checkedLiquid.ts'
import type { Liquid } from './liquid.ts'
import { loneTolerance } from './measuredLiquid.ts'
import { roelandsPressure, underPressure } from './underPressure.ts'

/** A liquid as a flow law that was fitted at one temperature. */
export interface FlowCurveParts {
  readonly name: string
  readonly source: string
  readonly law: FlowLawName
  readonly parameters: FlowParameters
  readonly temperature: Kelvin
  /** Rates that were measured, 1/s. */
  readonly shearRate: Span
  /** Whether rates beyond are answered, with a doubt, instead of refused. */
  readonly beyond: boolean
  readonly relativeUncertainty: Ratio | null
  readonly density: number | null
  readonly pressureCoefficient: KnownValue | null
}

/** A shear-thinning liquid, within 1 K of the temperature of its flow curve. */
export function flowCurveLiquid(parts: FlowCurveParts): Liquid {
  const { law, relativeUncertainty, density, pressureCoefficient, source } = parts
  const viscosityOf = flowFunction(law, parts.parameters)
  return checkedLiquid({
    name: parts.name,
    seen: 'own',
    temperature: { low: parts.temperature - loneTolerance, high: parts.temperature + loneTolerance },
    pressure: pressureCoefficient === null ? { low: 0, high: 0 } : roelandsPressure,
    shearRate: parts.shearRate,
    ratesBeyond: parts.beyond,
    pressureCoefficient,
    viscosityAt: ({ shearRate, pressure }) => {
      const viscosity = viscosityOf(shearRate)
      const plain = {
        viscosity,
        viscosityUncertainty: relativeUncertainty === null ? null : relativeUncertainty * viscosity,
        law: lawWords[law],
        source: `${source}; ${flowLaws[law].source}`,
        valid: `Shear rates of ${parts.shearRate.low} to ${parts.shearRate.high} 1/s, within 1 K of the flow curve.`,
        doubts: doubtsFound(...beyondRates(shearRate, parts.shearRate)),
      }
      return pressureCoefficient === null ? plain : underPressure(plain, pressureCoefficient, pressure)
    },
    densityAt:
      density === null
        ? null
        : () => ({ density, law: 'one density', source, valid: 'Near the temperature of the flow curve.', doubts: [] }),
  })
}

const lawWords: Readonly<Record<FlowLawName, string>> = {
  newtonian: 'Newton',
  powerLaw: 'power law',
  herschelBulkley: 'Herschel–Bulkley',
  cross: 'Cross',
  carreauYasuda: 'Carreau–Yasuda',
}

const beyondRates = (shearRate: number, { low, high }: Span): readonly (Doubt | undefined)[] => {
  const say = (seen: string, limit: string) =>
    `The shear rate of ${seen} 1/s lies beyond the ${limit} 1/s to which the flow curve was measured: the law is stretched.`
  return [
    doubtAbove({ kind: 'outsideFit', seen: shearRate, limit: high, say }),
    doubtBelow({ kind: 'outsideFit', seen: shearRate, limit: low, say }),
  ]
}
