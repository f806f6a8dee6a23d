import type { Problem } from '../../terms/index.ts'
import { flowParameterFaults } from '../flow/flowLaw.ts'
import { materialProblem } from '../materialProblem.ts'
import { inUnit } from '../refuse.ts'
import { type Span, within } from '../span.ts'
import { massFractions } from './glycerolWater.ts'
import type { LiquidRecipe } from './liquidRecipe.ts'
import { mineralOilGrades } from './mineralOil.ts'
import { siliconeGrades } from './siliconeOil.ts'
import { waltherRange } from './walther.ts'

/** A demand on one number of a recipe. */
interface Demand {
  readonly name: string
  readonly value: number
  readonly span: Span
  readonly unit: string
}

const demand = (name: string, value: number, [low, high, unit]: readonly [number, number, string]): Demand => ({
  name,
  value,
  span: { low, high },
  unit,
})

const anyTemperature = [150, 800, 'K'] as const
const anyViscosity = [1e-5, 1e7, 'Pa·s'] as const
const anyRate = [1e-9, 1e12, '1/s'] as const
const anyShare = [0, 1, ''] as const

/** All that is impossible about a recipe; empty when it can be made. */
export function recipeProblems(recipe: LiquidRecipe): readonly Problem[] {
  const outside = demandsOf(recipe)
    .filter(({ value, span }) => !within(value, span))
    .map(({ name, value, span, unit }) =>
      problem(name, {
        what: `${name} is ${inUnit(value, unit)}.`,
        mend: `Give ${inUnit(`${span.low} to ${span.high}`, unit)}.`,
      }),
    )
  // What compares numbers makes sense only once each of them is one.
  return outside.length > 0 ? outside : disagreements(recipe)
}

const problem = (name: string, complaint: { what: string; mend: string }): Problem =>
  materialProblem('liquidRecipeImpossible', name, complaint)

function demandsOf(recipe: LiquidRecipe): readonly Demand[] {
  switch (recipe.kind) {
    case 'water':
    case 'squalane':
    case 'mineralOil':
      return []
    case 'glycerolWater':
      return [{ name: 'massFraction', value: recipe.massFraction, span: massFractions, unit: '' }]
    case 'siliconeOil':
      return [{ name: 'grade', value: recipe.grade, span: siliconeGrades, unit: 'm²/s' }]
    case 'oil':
      return [...ownDemands(recipe), ...oilDemands(recipe)]
    case 'measured':
      return [
        ...ownDemands(recipe),
        ...recipe.points.flatMap(({ temperature, viscosity, viscosityUncertainty = 0 }, i) => [
          demand(`points[${i}].temperature`, temperature, anyTemperature),
          demand(`points[${i}].viscosity`, viscosity, anyViscosity),
          demand(`points[${i}].viscosityUncertainty`, viscosityUncertainty, [0, viscosity, 'Pa·s']),
        ]),
      ]
    case 'flowCurve':
      return [
        ...ownDemands(recipe),
        demand('temperature', recipe.temperature, anyTemperature),
        demand('shearRate.low', recipe.shearRate.low, anyRate),
        demand('shearRate.high', recipe.shearRate.high, anyRate),
        demand('relativeUncertainty', recipe.relativeUncertainty ?? 0, anyShare),
      ]
  }
}

type Own = Extract<LiquidRecipe, { source: string }>
type Oil = Extract<LiquidRecipe, { kind: 'oil' }>

const ownDemands = ({ density = 1000, pressureCoefficient = 0 }: Own): readonly Demand[] => [
  demand('density', density, [100, 25_000, 'kg/m³']),
  demand('pressureCoefficient', pressureCoefficient, [0, 1e-7, '1/Pa']),
]

const oilDemands = ({
  points,
  densityTemperature = 300,
  expansion = 0,
  temperature,
  ...oil
}: Oil): readonly Demand[] => [
  ...points.flatMap((point, i) => [
    demand(`points[${i}].temperature`, point.temperature, anyTemperature),
    demand(`points[${i}].viscosity`, point.viscosity, [waltherRange.low, waltherRange.high, 'm²/s']),
  ]),
  demand('relativeUncertainty', oil.relativeUncertainty ?? 0, [0, 0.5, '']),
  demand('densityTemperature', densityTemperature, anyTemperature),
  demand('expansion', expansion, [0, 5e-3, '1/K']),
  demand('temperature.low', temperature?.low ?? 300, anyTemperature),
  demand('temperature.high', temperature?.high ?? 300, anyTemperature),
]

function disagreements(recipe: LiquidRecipe): readonly Problem[] {
  switch (recipe.kind) {
    case 'mineralOil':
      return mineralOilGrades.includes(recipe.grade)
        ? []
        : [
            problem('grade', {
              what: `No usual mineral oil of grade ${recipe.grade} is known.`,
              mend: `Give one of ${mineralOilGrades.join(', ')}, or two measured viscosities of your own.`,
            }),
          ]
    case 'oil':
      return oilDisagreements(recipe)
    case 'measured':
      return measuredDisagreements(recipe)
    case 'flowCurve':
      return [
        ...flowParameterFaults(recipe.law, recipe.parameters).map((fault) =>
          problem('parameters', { what: `The law has a wrong parameter: ${fault}.`, mend: 'Take them from a fit.' }),
        ),
        ...risingSpan('shearRate', recipe.shearRate),
      ]
    default:
      return []
  }
}

function oilDisagreements({ points, density, temperature }: Oil): readonly Problem[] {
  const [cold, hot] = points[0].temperature < points[1].temperature ? points : [points[1], points[0]]
  const falls = hot.temperature > cold.temperature && hot.viscosity < cold.viscosity
  return [
    ...(falls
      ? []
      : [
          problem('points', {
            what: `Viscosity must fall with temperature, but is ${cold.viscosity} m²/s at ${cold.temperature} K and ${hot.viscosity} m²/s at ${hot.temperature} K.`,
            mend: 'Give two different temperatures with the thicker oil at the colder one.',
          }),
        ]),
    ...(density === undefined ? [problem('density', { what: 'The oil has no density.', mend: 'Give it.' })] : []),
    ...(temperature === undefined ? [] : risingSpan('temperature', temperature)),
  ]
}

function measuredDisagreements({ points }: Extract<LiquidRecipe, { kind: 'measured' }>): readonly Problem[] {
  if (points.length === 0) {
    return [problem('points', { what: 'There is no viscosity.', mend: 'Give one temperature with its viscosity.' })]
  }
  return points.flatMap(({ temperature }, i) =>
    i === 0 || temperature > points[i - 1].temperature
      ? []
      : [
          problem(`points[${i}].temperature`, {
            what: `Temperatures must rise, but ${temperature} K comes after ${points[i - 1].temperature} K.`,
            mend: 'Sort the points by temperature and keep one for each.',
          }),
        ],
  )
}

const risingSpan = (name: string, { low, high }: Span): readonly Problem[] =>
  low < high ? [] : [problem(name, { what: `${name} runs from ${low} to ${high}.`, mend: 'Give the low end first.' })]
