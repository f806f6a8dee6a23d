import { fromSi, readableUnit } from '../../core/quantity/index.ts'
import type { CurveModelName, Feature, FitEnd, Setup } from '../../core/terms/index.ts'
import { dryRegimes, type RegimeNames, wetRegimes } from '../../figure/index.ts'
import { plain, significant } from './printed.ts'

/** Their formulas, v being the sliding speed. */
export const modelFormulas: Readonly<Record<CurveModelName, string>> = {
  plateau: 'µ = h',
  powerLaw: 'µ = k vⁿ',
  stribeck: 'µ = µF + (µB − µF)/(1 + (v/x0)^m) with µF = k vⁿ and µB = h',
  stribeckSloped: 'µ = µF + (µB − µF)/(1 + (v/x0)^m) with µF = k vⁿ and µB = h v^l',
  stribeckExponential: 'µ = c + (h − c) exp(−v/x0) + k v',
}

/** A feature as people call it; without a liquid there is neither boundary regime nor film. */
export function featureInWords({ name }: Pick<Feature, 'name'>, [, between, fast]: RegimeNames): string {
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

/** What the regimes of a record are called. */
export const regimesOf = ({ liquid }: Pick<Setup, 'liquid'>): RegimeNames =>
  liquid === undefined ? dryRegimes : wetRegimes

/** A value of the curve in a readable unit; an interval's end is printed in the unit of its `middle`. */
export function inReadableUnit(value: number, unit: string, middle: number = value): string {
  if (unit !== 'm/s') return `${significant(value, 4)}${unit === '' ? '' : ` ${unit}`}`
  const readable = readableUnit(middle, 'velocity')
  return `${significant(fromSi(value, readable), 4)} ${readable.text}`
}

/** Why the fit stopped, as a sentence. */
export function endInWords(end: FitEnd | null): string {
  switch (end?.why) {
    case 'converged':
      return 'The fit converged.'
    case 'stepLimit':
      return `The fit stopped after ${end.iterations} iterations before it had converged.`
    case 'atBound':
      return `The fit ended with ${end.parameter} at its bound of ${plain(end.bound, 3)}.`
    case 'singular':
      return `The data cannot tell ${end.parameters.join(' from ')}.`
    case undefined:
      return ''
  }
}
