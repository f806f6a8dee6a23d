import { type Point, type SharedSource, sharedSources, sharedSourceWords } from '../../core/terms/index.ts'
import { isDrawable } from '../domain.ts'

/** One input's standard uncertainty of friction as a share of friction, over the points. */
export interface BudgetRow {
  readonly words: string
  readonly part: 'own' | 'together' | 'source'
  readonly median: number
  readonly low: number
  readonly high: number
}

/** The rows of the budget, and the inputs that make nothing. */
export interface BudgetRows {
  /** The own part first, then what all points share, together and by source with the largest first. */
  readonly rows: readonly BudgetRow[]
  /** Points behind the rows: those that the fit uses, or all where it uses none. */
  readonly points: number
  /** Sources that are zero on every point: nobody gave them, or there is none. */
  readonly nothing: readonly string[]
  /** Sources that no point names. */
  readonly absent: readonly string[]
}

export function budgetRows(all: readonly Point[]): BudgetRows {
  const drawable = all.filter(isDrawable).filter(({ friction }) => friction !== 0)
  const trusted = drawable.filter((point) => point.trusted)
  const points = trusted.length > 0 ? trusted : drawable
  const row = (words: string, part: BudgetRow['part'], pick: (point: Point) => number | null | undefined) => {
    const shares = points.flatMap((point) => {
      const share = Math.abs((pick(point) ?? Number.NaN) / point.friction)
      return Number.isFinite(share) ? [share] : []
    })
    return shares.length === 0 ? [] : [{ words, part, ...spreadOf(shares) }]
  }
  const named = (source: SharedSource): boolean => points.some((point) => point.shared[source] !== undefined)
  const wordsOf = wordsFor(named)
  const sources = sharedSources
    .filter((source) => source !== 'loadFactor' || named(source) || !named('lever'))
    .map((source) => ({ source, row: row(wordsOf(source), 'source', (point) => point.shared[source]) }))
  const some = sources.flatMap(({ row: [own] }) => (own !== undefined && own.high > 0 ? [own] : []))
  const together = row('all shared parts together', 'together', (point) => point.sharedUncertainty)
  return {
    rows: [
      ...row('own part of one step', 'own', (point) => point.ownUncertainty),
      ...(some.length > 0 ? together : []),
      ...some.sort((one, two) => two.median - one.median || two.high - one.high),
    ],
    points: points.length,
    nothing: sources.filter(({ row: [own] }) => own?.high === 0).map(({ source }) => wordsOf(source)),
    absent:
      points.length === 0 ? [] : sources.filter(({ row }) => row.length === 0).map(({ source }) => wordsOf(source)),
  }
}

/** An inclination moves lever and load factor together, so a budget may name the lever for both. */
const wordsFor =
  (named: (source: SharedSource) => boolean) =>
  (source: SharedSource): string =>
    source === 'lever' && !named('loadFactor') ? 'lever arm and load factor' : sharedSourceWords[source]

function spreadOf(shares: number[]): Pick<BudgetRow, 'median' | 'low' | 'high'> {
  const sorted = shares.sort((one, two) => one - two)
  const middle = sorted.length >> 1
  const median = sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2
  return { median, low: sorted[0], high: sorted[sorted.length - 1] }
}

/** Which sources make nothing, in a sentence each. */
export const nothingInWords = ({ nothing, absent }: BudgetRows): readonly string[] =>
  [
    nothing.length === 0 ? '' : `Not given or none: ${nothing.join(', ')}.`,
    absent.length === 0 ? '' : `No part of this budget: ${absent.join(', ')}.`,
  ].filter((sentence) => sentence !== '')
