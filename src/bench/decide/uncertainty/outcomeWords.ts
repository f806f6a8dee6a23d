import type { UncertaintyModel } from '../../../io/uncertainty/index.ts'
import type { DerivedQuantity } from './propagateModel.ts'

/** The unit in which a result is printed, and how its SI values come into it. */
export function printedIn({ output, formula }: Pick<DerivedQuantity, 'output' | 'formula'>): {
  readonly text: string
  readonly from: (value: number) => number
  /** A difference or an uncertainty, which knows no offset. */
  readonly size: (value: number) => number
} {
  const { unit } = output
  if (unit === undefined) return { text: formula.unit, from: (value) => value, size: (value) => value }
  return { text: unit.text, from: (value) => (value - unit.offset) / unit.factor, size: (value) => value / unit.factor }
}

/** Whether the two methods agree, and what to do where they do not. */
export function outcomeSentence(
  { comparison, monteCarlo, linear, output, formula }: DerivedQuantity,
  { digits }: Pick<UncertaintyModel, 'digits'>,
): string {
  const { text, size } = printedIn({ output, formula })
  const number = (value: number): string => `${Number(size(value).toPrecision(2))}${text === '1' ? '' : ` ${text}`}`
  const lost =
    monteCarlo.notFinite === 0
      ? ''
      : ` In ${monteCarlo.notFinite} of ${monteCarlo.trials} trials the formula gave no number; they are left out, so mend the model first.`
  const settled =
    monteCarlo.end === 'settled'
      ? ''
      : ` After ${monteCarlo.trials} trials the ends are not settled to ${number(monteCarlo.tolerance)} yet: give it more.`
  if (comparison.agree) {
    return `Both methods agree: the ends lie ${number(comparison.low)} and ${number(comparison.high)} apart, within ${number(comparison.tolerance)} (JCGM 101:2008, 8.1, ${digits} digits).${settled}${lost}`
  }
  const second =
    comparison.second?.agree === true
      ? ` With the terms of next higher order it does (u ${number(linear.second?.standardUncertainty ?? 0)}).`
      : ''
  const why = comparison.lopsided ? ' The distribution is lopsided: report the shortest interval.' : ''
  return `The law of propagation does not hold here: its ends lie ${number(comparison.low)} and ${number(comparison.high)} off, more than ${number(comparison.tolerance)} (JCGM 101:2008, 8.1, ${digits} digits).${second} Report the interval of Monte Carlo.${why}${settled}${lost}`
}
