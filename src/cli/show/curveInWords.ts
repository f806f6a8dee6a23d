import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import type { Curve, CurveModelName, Feature, FitEnd } from '../../core/terms/index.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** Members of the curve family as people call them. */
const modelWords: Readonly<Record<CurveModelName, string>> = {
  plateau: 'a plateau',
  powerLaw: 'a power law',
  stribeck: 'boundary level and film branch',
  stribeckSloped: 'sloped boundary and film branch',
  stribeckExponential: 'plateau, exponential fall and viscous rise',
}

const featureWords: Readonly<Record<Feature['name'], string>> = {
  boundaryLevel: 'boundary level',
  minimumSpeed: 'speed of least friction',
  minimumFriction: 'least friction',
  filmSlope: 'slope of the film branch',
  mixedBegins: 'mixed regime begins',
  filmBegins: 'full film begins',
}

/** Which curve was chosen against which, how well it fits and why the fit stopped, in one or two sentences. */
export function curveInWords(curve: Curve): string {
  if (curve.model === null) return 'No curve was fitted.'
  const [best, next] = curve.choices
  const weight =
    best === undefined
      ? ''
      : ` (weight ${best.weight.toFixed(2)}${next === undefined ? '' : `; next ${modelWords[next.model]}, ${next.weight.toFixed(2)}`})`
  const scatter =
    curve.extraScatter > 0
      ? ` Steps scatter by ${printQuantity(curve.extraScatter, 'ratio', { digits: 2 })} beyond their own uncertainty; the band holds it.`
      : ''
  return `Curve through ${curve.points} points: ${modelWords[curve.model]}${weight}. ${endInWords(curve.end)}${scatter}`
}

function endInWords(end: FitEnd | null): string {
  switch (end?.why) {
    case 'converged':
      return 'The fit converged.'
    case 'stepLimit':
      return `The fit stopped after ${end.iterations} iterations before it converged.`
    case 'atBound':
      return `The fit ended with ${end.parameter} at its bound of ${short(end.bound)}.`
    case 'singular':
      return `The data cannot tell ${end.parameters.join(' from ')}.`
    case undefined:
      return ''
  }
}

/** Features with their 95 % intervals, and below them why there is none. */
export function featureTable(features: readonly Feature[], width: number): string {
  const cell = (one: Feature, value: number | null): string =>
    one.value === null ? '' : (inUnit(value, one) ?? 'open')
  const table = textTable([
    { head: 'feature', unit: '', align: 'left', cells: features.map(({ name }) => featureWords[name]) },
    { head: 'value', unit: '', align: 'left', cells: features.map((one) => inUnit(one.value, one) ?? 'none') },
    { head: '95 % from', unit: '', align: 'left', cells: features.map((one) => cell(one, one.low)) },
    { head: 'to', unit: '', align: 'left', cells: features.map((one) => cell(one, one.high)) },
  ])
  const missing = features
    .filter(({ value, why }) => value === null && why !== undefined)
    .map(({ name, why }) => wrap(`No ${featureWords[name]}: ${why}`, width, { indent: '  ' }))
  return [table, ...missing].join('\n')
}

/** A number in its unit; speeds in the unit in which the feature itself is read best. */
function inUnit(
  value: number | null,
  { value: middle, unit }: { value: number | null; unit: string },
): string | undefined {
  if (value === null || !Number.isFinite(value)) return undefined
  if (unit !== 'm/s') return `${short(value)}${unit === '' ? '' : ` ${unit}`}`
  const readable = readableUnit(middle ?? value, 'velocity')
  return `${short(fromSi(value, readable))} ${readable.text}`
}

/** Four digits: intervals of features are never known better. */
export const short = (value: number): string => String(Number(value.toPrecision(4)))

/** Parameters with their 95 % intervals. */
export const parameterTable = ({ parameters }: Curve): string =>
  textTable([
    { head: 'parameter', unit: '', align: 'left', cells: parameters.map(({ name }) => name) },
    { head: 'value', unit: '', align: 'left', cells: parameters.map((one) => inUnit(one.value, one) ?? 'none') },
    { head: '95 % from', unit: '', align: 'left', cells: parameters.map((one) => inUnit(one.low, one) ?? 'open') },
    { head: 'to', unit: '', align: 'left', cells: parameters.map((one) => inUnit(one.high, one) ?? 'open') },
  ])

/** How the members of the family fared, best first. */
export const choiceTable = ({ choices }: Curve): string =>
  textTable([
    { head: 'curve', unit: '', align: 'left', cells: choices.map(({ model }) => modelWords[model]) },
    { head: 'ΔAICc', unit: '', align: 'point', cells: choices.map(({ delta }) => delta.toFixed(1)) },
    { head: 'weight', unit: '', align: 'point', cells: choices.map(({ weight }) => weight.toFixed(3)) },
    { head: 'parameters', unit: '', align: 'right', cells: choices.map(({ parameters }) => String(parameters)) },
  ])
