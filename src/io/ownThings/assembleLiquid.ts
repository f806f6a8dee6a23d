import type { FlowLawName, LiquidRecipe, MeasuredViscosity } from '../../core/material/index.ts'
import { parseQuantity } from '../../core/quantity/index.ts'
import type { Kelvin } from '../../core/terms/index.ts'
import type { RunValues } from '../virtualRun/runValues.ts'
import { namesIn } from './assembleBody.ts'
import { flowLawsWritten, liquidFamiliesWritten } from './liquidKeys.ts'

/** A liquid as its file tells it; a flow curve lies in a table of its own and is still to be fitted. */
export interface WrittenLiquid {
  readonly name: string
  readonly synonyms: readonly string[]
  readonly note?: string
  readonly shared: Pick<
    Extract<LiquidRecipe, { source: string }>,
    'source' | 'density' | 'family' | 'pressureCoefficient'
  >
  readonly points: readonly MeasuredViscosity[]
  /** `law` undefined for the best. */
  readonly flowCurve?: { readonly file: string; readonly temperature: Kelvin; readonly law?: FlowLawName }
}

/** What is wrong with it beyond the ranges of its keys. */
export interface LiquidFault {
  readonly path: string
  readonly what: string
  readonly mend: string
}

/** The liquid from values that have passed their ranges. */
export function assembleLiquid(values: RunValues): {
  readonly liquid: WrittenLiquid
  readonly faults: readonly LiquidFault[]
} {
  const share = values.maybe('liquid.viscosityUncertainty')
  const { points, faults } = viscositiesIn(values.text('liquid.viscosities', ''), share)
  const hasCurve = values.has('liquid.flowCurve')
  const hasPoints = values.has('liquid.viscosities')
  const both = hasCurve === hasPoints ? [neitherOrBoth(hasCurve)] : []
  const family = values.has('liquid.family') ? liquidFamiliesWritten[values.text('liquid.family')] : undefined
  const density = values.maybe('liquid.density')
  const perGigapascal = values.maybe('liquid.pressureViscosity')
  const law = flowLawsWritten[values.text('liquid.flowCurve.law', 'best')]
  return {
    liquid: {
      name: values.text('liquid.name'),
      synonyms: namesIn(values, 'liquid.synonyms'),
      ...(values.has('liquid.note') ? { note: values.text('liquid.note') } : {}),
      shared: {
        source: values.text('liquid.source'),
        ...(density === undefined ? {} : { density }),
        ...(family === undefined ? {} : { family }),
        ...(perGigapascal === undefined ? {} : { pressureCoefficient: perGigapascal * 1e-9 }),
      },
      points,
      ...(hasCurve
        ? {
            flowCurve: {
              file: values.text('liquid.flowCurve.file'),
              temperature: values.number('liquid.flowCurve.temperature'),
              ...(law === undefined ? {} : { law }),
            },
          }
        : {}),
    },
    faults: [...both, ...faults],
  }
}

const neitherOrBoth = (both: boolean): LiquidFault => ({
  path: 'liquid',
  what: both ? 'The liquid has viscosities and a flow curve.' : 'The liquid has neither viscosities nor a flow curve.',
  mend: both
    ? 'Keep one of them: a flow curve where viscosity falls with shear rate.'
    : 'Add "viscosities: 5.1 mPa·s at 20 °C", or a flowCurve with file and temperature.',
})

/** Reads `5.1 mPa·s at 20 °C; 3.5 mPa·s at 35 °C` in order of temperature. */
function viscositiesIn(
  text: string,
  share: number | undefined,
): { readonly points: readonly MeasuredViscosity[]; readonly faults: readonly LiquidFault[] } {
  const points: MeasuredViscosity[] = []
  const faults: LiquidFault[] = []
  const fault = (what: string, mend: string): void => void faults.push({ path: 'liquid.viscosities', what, mend })
  for (const part of text.split(';').filter((one) => one.trim() !== '')) {
    const [thick, warm] = part.split(/\s+at\s+|\s*@\s*/)
    if (warm === undefined) {
      fault(`"${part.trim()}" says no temperature.`, 'Write each as "3.5 mPa·s at 35 °C".')
      continue
    }
    const viscosity = parseQuantity(thick, 'viscosity')
    const temperature = parseQuantity(warm, 'temperature')
    if (!viscosity.ok) fault(viscosity.what, viscosity.mend)
    if (!temperature.ok) fault(temperature.what, temperature.mend)
    if (!viscosity.ok || !temperature.ok) continue
    const uncertainty = share === undefined ? {} : { viscosityUncertainty: share * viscosity.value }
    points.push({ temperature: temperature.value, viscosity: viscosity.value, ...uncertainty })
  }
  return { points: points.sort((a, b) => a.temperature - b.temperature), faults }
}
