import { scaleLinear } from 'd3-scale'
import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Box, Sheet } from './sheet.ts'
import { linearTicks, tickLabel } from './ticks.ts'

/** A plot with a linear scale upwards, one of several that may lie below each other. */
export interface Panel {
  readonly plot: Box
  /** Pixels of a value, held to the plot. */
  readonly y: (value: number) => number
  readonly low: number
  readonly high: number
}

/** A panel that covers all of the values with a little air; `from` and `to` are taken in. */
export function panelOf(plot: Box, values: readonly number[], air = 0.06): Panel {
  const finite = values.filter(Number.isFinite)
  const least = Math.min(...finite)
  const most = Math.max(...finite)
  const [low, high] = finite.length === 0 ? [0, 1] : [least, most]
  const margin = Math.max(air * (high - low), 1e-9 * Math.abs(high), 1e-12)
  const scale = scaleLinear()
    .domain([low - margin, high + margin])
    .range([plot.bottom, plot.top])
    .clamp(true)
  return { plot, y: (value) => scale(value), low: low - margin, high: high + margin }
}

/** Rules and labels at the left, the line of the axis, and a title along it. */
export function panelAxis({ plot, y, low, high }: Panel, title: string, { palette }: Sheet): Markup {
  const ticks = linearTicks(low, high, 26 / (plot.bottom - plot.top))
  const rules = ticks.map((tick) => `M${rounded(plot.left)} ${rounded(y(tick))}H${rounded(plot.right)}`).join('')
  const labels = ticks.map((tick) =>
    lettering(tickLabel(tick), {
      x: plot.left - 9,
      y: y(tick) + 4,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'end',
    }),
  )
  return element(
    'g',
    {},
    element('path', { d: rules, stroke: palette.hairline, fill: 'none' }),
    element('path', {
      d: `M${rounded(plot.left)} ${plot.top}V${plot.bottom}H${rounded(plot.right)}`,
      stroke: palette.ink,
      fill: 'none',
    }),
    ...labels,
    lettering(title, {
      x: 17,
      y: (plot.top + plot.bottom) / 2,
      fill: palette.ink,
      size: sizes.small,
      anchor: 'middle',
      turn: -90,
    }),
  )
}

/** A level line across a panel with words at its right end. */
export function levelLine(
  { plot, y }: Panel,
  { value, words, dash }: { readonly value: number; readonly words: string; readonly dash?: string },
  { palette }: Sheet,
): Markup {
  const at = y(value)
  return (
    element('path', {
      d: `M${rounded(plot.left)} ${rounded(at)}H${rounded(plot.right)}`,
      stroke: palette.ink,
      'stroke-width': 1.1,
      'stroke-dasharray': dash,
      fill: 'none',
    }) + lettering(words, { x: plot.right + 8, y: at + 4, fill: palette.quiet, size: sizes.small })
  )
}

/** A number with as many digits as its scatter bears. */
export const shortNumber = (value: number, digits = 4): string => tickLabel(Number(value.toPrecision(digits)))
