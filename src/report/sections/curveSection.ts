import { type Curve, modelWords } from '../../core/terms/index.ts'
import type { RegimeNames } from '../../figure/index.ts'
import type { ReportBlock } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import { featureInWords, inReadableUnit, modelFormulas, regimesOf } from '../words/curveWords.ts'
import { capital, counted, decimals, percent } from '../words/printed.ts'
import { figureNamed } from './figureNamed.ts'
import type { Numbering } from './numbering.ts'
import type { SectionOf } from './sectionOf.ts'

/** The curve with its features and parameters, each with its interval, and how the rivals fared. */
export const curveSection: SectionOf = (input, numbers) => ({
  heading: 'Curve',
  blocks: [
    ...figureNamed('curve', input, numbers),
    ...(input.curve === null || input.curve.model === null ? [] : tables(input.curve, input, numbers)),
  ],
})

function tables(curve: Curve, { setup }: ReportInput, numbers: Numbering): ReportBlock[] {
  const features = featureTable(curve, regimesOf(setup), numbers)
  return [features, parameterTable(curve, numbers), ...(curve.choices.length > 1 ? [choiceTable(curve, numbers)] : [])]
}

const end = (at: number | null, unit: string, middle: number): string =>
  at === null ? 'open' : inReadableUnit(at, unit, middle)

function featureTable({ features }: Curve, regimes: RegimeNames, numbers: Numbering): ReportBlock {
  const common = commonClauses(features)
  return numbers.table({
    caption: 'Features of the curve with 95 % intervals. “Open” means that the data do not bound that end.',
    columns: [
      { head: 'feature', unit: '', align: 'left' },
      { head: 'value', unit: '', align: 'left' },
      { head: '95 % from', unit: '', align: 'left' },
      { head: 'to', unit: '', align: 'left' },
      { head: 'what it is here', unit: '', align: 'left' },
    ],
    rows: features.map(({ name, value, low, high, unit, why }) => [
      featureInWords({ name }, regimes),
      value === null ? 'none' : inReadableUnit(value, unit),
      value === null && low === null ? '–' : end(low, unit, value ?? low ?? 0),
      value === null && high === null ? '–' : end(high, unit, value ?? high ?? 0),
      clausesOf(why)
        .filter((clause) => !common.includes(clause))
        .join('; '),
    ]),
    notes: common.map((clause) => `${capital(clause)}.`),
  })
}

const clausesOf = (why: string | undefined): string[] => (why === undefined ? [] : why.split('; '))

/** What is said of every feature is said once, below the table. */
const commonClauses = (features: Curve['features']): readonly string[] =>
  features.length < 2
    ? []
    : clausesOf(features[0].why).filter((clause) => features.every(({ why }) => clausesOf(why).includes(clause)))

function parameterTable({ parameters, model, correlations }: Curve, numbers: Numbering): ReportBlock {
  const formula = model === null ? '' : `${capital(modelWords[model])}: ${modelFormulas[model]}; SI units.`
  const pairs = correlations.map(({ first, second, value }) => `${first} with ${second} ${decimals(value, 2)}`)
  return numbers.table({
    caption: `Parameters with 95 % intervals. ${formula}`,
    columns: [
      { head: 'parameter', unit: '', align: 'left' },
      { head: 'value', unit: '', align: 'left' },
      { head: '95 % from', unit: '', align: 'left' },
      { head: 'to', unit: '', align: 'left' },
    ],
    rows: parameters.map(({ name, value, low, high, unit }) => [
      name,
      inReadableUnit(value, unit),
      end(low, unit, value),
      end(high, unit, value),
    ]),
    notes: pairs.length === 0 ? [] : [`Correlated above 0.9: ${pairs.join(', ')}.`],
  })
}

function choiceTable({ choices, extraScatter, chiSquared, degreesOfFreedom }: Curve, numbers: Numbering): ReportBlock {
  const squares =
    chiSquared === null
      ? ''
      : `Weighted sum of squares of the chosen member ${Number(chiSquared.toPrecision(3))} on ${counted(degreesOfFreedom, 'degree')} of freedom, by own uncertainty alone.`
  const scatter = extraScatter > 0 ? `Scatter between steps beyond it: ${percent(extraScatter)} of friction.` : ''
  return numbers.table({
    caption: 'Members of the curve family by weight.',
    columns: [
      { head: 'member', unit: '', align: 'left' },
      { head: 'parameters', unit: '', align: 'right' },
      { head: 'weight', unit: '', align: 'point' },
    ],
    rows: choices.map(({ model, parameters, weight }) => [modelWords[model], String(parameters), decimals(weight, 3)]),
    notes: [squares, scatter].filter((note) => note !== ''),
  })
}
