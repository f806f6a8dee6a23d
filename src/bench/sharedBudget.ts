import { type Point, type SharedSource, sharedSources } from '../core/terms/index.ts'

/** How much of the shared variance one cause makes. */
export interface BudgetShare {
  readonly source: SharedSource
  /** Standard uncertainty of friction from this cause, relative to friction; root mean square over the points. */
  readonly relative: number
  /** Part of the shared variance, 0 to 1. */
  readonly share: number
}

/**
 * Which cause dominates what all points have in common: each cause's squared relative part, averaged over the trusted
 * points, and its share of their sum (JCGM 100:2008, 5.1; causes are independent of each other). Largest first; causes without a part are left out.
 */
export function sharedBudget(points: readonly Point[]): readonly BudgetShare[] {
  const usable = points.filter(({ trusted, friction }) => trusted && friction !== null && friction !== 0)
  const squares = sharedSources.map((source) => {
    const parts = usable.map(({ shared, friction }) => ((shared[source] ?? 0) / (friction ?? Number.NaN)) ** 2)
    return { source, square: parts.reduce((sum, part) => sum + part, 0) / Math.max(1, parts.length) }
  })
  const total = squares.reduce((sum, { square }) => sum + square, 0)
  return squares
    .filter(({ square }) => square > 0)
    .sort((a, b) => b.square - a.square)
    .map(({ source, square }) => ({ source, relative: Math.sqrt(square), share: square / total }))
}
