import type { Point } from '../core/terms/index.ts'
import { isDrawable } from './domain.ts'
import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Stage } from './stage.ts'
import { tickLabel } from './ticks.ts'

/** A shared part under a ten-thousandth of friction is not worth a bracket: nothing else is known as well. */
const smallest = 1e-4

/** Half-width of a 95 % interval in standard uncertainties of a normal error. */
const normal95 = 1.96

/**
 * The part of the uncertainty that all points have in common, as one bracket beside the plot: it would move the
 * whole curve up or down. Stated as a share of friction or as friction itself, whichever differs less from point to
 * point, and drawn at the median friction.
 */
export function sharedBracket(points: readonly Point[], stage: Stage): Markup {
  const parts = points
    .filter(isDrawable)
    .flatMap(({ friction, sharedUncertainty }) =>
      friction !== 0 &&
      sharedUncertainty !== null &&
      sharedUncertainty > 0 &&
      sharedUncertainty < Number.POSITIVE_INFINITY
        ? [{ friction, own: sharedUncertainty, share: sharedUncertainty / Math.abs(friction) }]
        : [],
    )
  if (parts.length === 0) return ''
  const level = median(parts.map(({ friction }) => friction))
  const asShare = spread(parts.map(({ share }) => share)) <= spread(parts.map(({ own }) => own))
  const share = normal95 * median(parts.map((part) => part.share))
  const half = asShare ? share * Math.abs(level) : normal95 * median(parts.map(({ own }) => own))
  if (!Number.isFinite(half) || half < smallest * Math.abs(level)) return ''
  const text = asShare ? inPercent(share) : tickLabel(Number(half.toPrecision(2)))
  return bracket([stage.y(level - half), stage.y(level + half)], `± ${text}`, stage)
}

function bracket([low, high]: readonly [number, number], size: string, { plot, palette }: Stage): Markup {
  const x = plot.right + 14
  const middle = Math.min(Math.max((high + low) / 2, plot.top + 24), plot.bottom - 40)
  const words = [size, 'common to', 'all points', '(95 %)'].map((text, index) =>
    lettering(text, {
      x: x + 13,
      y: middle - 2 + index * 14,
      fill: palette.shared,
      size: sizes.small,
      weight: index === 0 ? 600 : undefined,
    }),
  )
  const d = `M${x} ${rounded(high)}h7V${rounded(low)}h-7`
  return element('g', {}, element('path', { d, fill: 'none', stroke: palette.shared, 'stroke-width': 1.8 }), ...words)
}

/** Greatest over least. */
const spread = (values: readonly number[]): number => Math.max(...values) / Math.min(...values)

const inPercent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  if (sorted.length === 0) return Number.NaN
  return sorted.length % 2 === 1
    ? (sorted[middle] ?? Number.NaN)
    : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2
}
