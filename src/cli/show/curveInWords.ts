import type { RegimeNames } from '../../bench/index.ts'
import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import { type Curve, type Feature, type FitEnd, modelWords } from '../../core/terms/index.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

type Named = Pick<Feature, 'name'>

function featureWords({ name }: Named, [, between, fast]: RegimeNames): string {
  switch (name) {
    case 'boundaryLevel':
      return 'level of the slow end'
    case 'minimumSpeed':
      return 'speed of least friction'
    case 'minimumFriction':
      return 'least friction'
    case 'filmSlope':
      return 'slope of the fast end'
    case 'mixedBegins':
      return `${between} begins`
    case 'filmBegins':
      return `${fast} begins`
  }
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
export function featureTable({ features }: Curve, names: RegimeNames, width: number): string {
  const had = features.filter(({ value }) => value !== null)
  const table =
    had.length === 0
      ? []
      : [
          estimateTable(
            'feature',
            had.map((one) => ({ ...one, name: featureWords(one, names) })),
          ),
        ]
  const reasons = [...new Set(features.filter(({ value }) => value === null).map(({ why }) => why ?? 'not known'))]
  const missing = reasons.map((reason) => {
    const which = features.filter(({ value, why }) => value === null && (why ?? 'not known') === reason)
    const words = which.map((one) => `no ${featureWords(one, names)}`).join(', ')
    return wrap(`${words.charAt(0).toUpperCase()}${words.slice(1)}: ${reason}.`, width, { indent: '  ' })
  })
  return [...table, ...missing].join('\n')
}

type Shown = Pick<Feature, 'value' | 'low' | 'high' | 'unit'> & { readonly name: string }

function estimateTable(head: string, shown: readonly Shown[]): string {
  const cells = shown.map(intervalCells)
  const column = (title: string, at: 0 | 1 | 2) =>
    ({ head: title, unit: '', align: 'left', cells: cells.map((row) => row[at]) }) as const
  const names = { head, unit: '', align: 'left', cells: shown.map(({ name }) => name) } as const
  return textTable([names, column('value', 0), column('95 % from', 1), column('to', 2)])
}

/** Value and ends to the same place, so that half of the interval shows two digits (JCGM 100:2008, 7.2.6); four digits where it is open. */
function intervalCells({ value, low, high, unit }: Shown): readonly [string, string, string] {
  const readable = unit === 'm/s' && value !== null ? readableUnit(value, 'velocity') : undefined
  const text = readable?.text ?? unit
  const shown = (one: number | null): number | null =>
    one === null || !Number.isFinite(one) ? null : readable === undefined ? one : fromSi(one, readable)
  const [middle, from, to] = [shown(value), shown(low), shown(high)]
  const half = from === null || to === null ? 0 : (to - from) / 2
  const places = half > 0 ? Math.min(12, Math.max(0, 1 - Math.floor(Math.log10(half)))) : undefined
  const print = (one: number | null): string => {
    if (one === null) return 'open'
    return `${places === undefined ? short(one) : one.toFixed(places)}${text === '' ? '' : ` ${text}`}`
  }
  return [print(middle), print(from), print(to)]
}

/** Four digits. */
export const short = (value: number): string => String(Number(value.toPrecision(4)))

/** Parameters with their 95 % intervals. */
export const parameterTable = ({ parameters }: Curve): string => estimateTable('parameter', parameters)

/** How the members of the family fared, best first. */
export const choiceTable = ({ choices }: Curve): string =>
  textTable([
    { head: 'curve', unit: '', align: 'left', cells: choices.map(({ model }) => modelWords[model]) },
    { head: 'ΔAICc', unit: '', align: 'point', cells: choices.map(({ delta }) => delta.toFixed(1)) },
    { head: 'weight', unit: '', align: 'point', cells: choices.map(({ weight }) => weight.toFixed(3)) },
    { head: 'parameters', unit: '', align: 'right', cells: choices.map(({ parameters }) => String(parameters)) },
  ])
