import type { Point } from '../core/terms/index.ts'
import { isDrawable } from './domain.ts'
import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Stage } from './stage.ts'

/** Half-width of a 95 % interval in standard uncertainties of a normal error. */
const normal95 = 1.96

/**
 * The part of the uncertainty that all points have in common, as one bracket beside the plot: it would move the
 * whole curve up or down. Drawn at the median friction, where its height is true on either kind of axis.
 */
export function sharedBracket(points: readonly Point[], stage: Stage): Markup {
  const drawable = points.filter(isDrawable).filter((point) => point.sharedUncertainty !== null && point.friction !== 0)
  const share = median(drawable.map((point) => (point.sharedUncertainty ?? 0) / Math.abs(point.friction)))
  if (!(share > 0 && share < Number.POSITIVE_INFINITY)) return ''
  const half = normal95 * share
  const level = median(drawable.map((point) => point.friction))
  const high = stage.y(level * (1 + half))
  const low = stage.y(level * (1 - half))
  const { plot, palette } = stage
  const x = plot.right + 14
  const bracket = `M${x} ${rounded(high)}h7V${rounded(low)}h-7`
  const middle = Math.min(Math.max((high + low) / 2, plot.top + 24), plot.bottom - 40)
  const lines = [`± ${inPercent(half)}`, 'common to', 'all points', '(95 %)']
  const words = lines.map((text, index) =>
    lettering(text, {
      x: x + 13,
      y: middle - 2 + index * 14,
      fill: palette.shared,
      size: sizes.small,
      weight: index === 0 ? 600 : undefined,
    }),
  )
  return element(
    'g',
    {},
    element('path', { d: bracket, fill: 'none', stroke: palette.shared, 'stroke-width': 1.8 }),
    ...words,
  )
}

export const inPercent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  if (sorted.length === 0) return Number.NaN
  return sorted.length % 2 === 1
    ? (sorted[middle] ?? Number.NaN)
    : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2
}
