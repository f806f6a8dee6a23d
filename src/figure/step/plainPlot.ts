import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Box, Sheet } from '../sheet.ts'
import { linearTicks, tickLabel } from '../ticks.ts'

/** A plot with two even axes, as the pictures of one step have it. */
export interface PlainPlot {
  readonly box: Box
  /** Pixels of a value, held to the plot. */
  readonly x: (value: number) => number
  readonly y: (value: number) => number
  readonly across: Axis
  readonly up: Axis
}

/** From where to where an axis runs and what it is called. Own ticks where round tenths would not do, such as degrees. */
export interface Axis {
  readonly from: number
  readonly to: number
  readonly title: string
  readonly ticks?: readonly number[]
}

/** Height below the plot that the axis across takes. */
export const acrossHeight = 44

/** Margins beside the plot. */
export const plainMargins = { left: 74, right: 24 } as const

export function plainPlot(box: Box, across: Axis, up: Axis): PlainPlot {
  const held = (share: number): number => Math.min(1, Math.max(0, share))
  return {
    box,
    across,
    up,
    x: (value) => box.left + held((value - across.from) / (across.to - across.from)) * (box.right - box.left),
    y: (value) => box.bottom - held((value - up.from) / (up.to - up.from)) * (box.bottom - box.top),
  }
}

/** Rules, ticks, labels and titles. Belongs under what is drawn. */
export function plainAxes({ box, x, y, across, up }: PlainPlot, { palette }: Sheet): Markup {
  const columns = across.ticks ?? linearTicks(across.from, across.to, 60 / (box.right - box.left))
  const rows = up.ticks ?? linearTicks(up.from, up.to, 30 / (box.bottom - box.top))
  const rules = rows.map((value) => `M${box.left} ${rounded(y(value))}H${box.right}`).join('')
  const ticks = columns.map((value) => `M${rounded(x(value))} ${box.bottom}v6`).join('')
  const quiet = { fill: palette.quiet, size: sizes.small }
  return element(
    'g',
    {},
    element('path', { d: rules, stroke: palette.hairline, 'stroke-width': 0.8, fill: 'none' }),
    element('path', {
      d: `M${box.left} ${box.top}V${box.bottom}H${box.right}${ticks}`,
      stroke: palette.ink,
      fill: 'none',
    }),
    ...rows.map((value) => lettering(tickLabel(value), { x: box.left - 9, y: y(value) + 4, anchor: 'end', ...quiet })),
    ...columns.map((value) =>
      lettering(tickLabel(value), { x: x(value), y: box.bottom + 19, anchor: 'middle', ...quiet }),
    ),
    lettering(across.title, {
      x: (box.left + box.right) / 2,
      y: box.bottom + 37,
      fill: palette.ink,
      anchor: 'middle',
    }),
    lettering(up.title, {
      x: 17,
      y: (box.top + box.bottom) / 2,
      fill: palette.ink,
      anchor: 'middle',
      turn: -90,
    }),
  )
}

/** Least and greatest of the numbers with a margin above and below, also where all are alike; undefined without a number. */
export function roomFor(values: Iterable<number>, margin = 0.08): readonly [number, number] | undefined {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const value of values) {
    if (!Number.isFinite(value)) continue
    if (value < low) low = value
    if (value > high) high = value
  }
  if (!(low <= high)) return undefined
  const room = Math.max(margin * (high - low), 1e-3 * Math.max(Math.abs(low), Math.abs(high)), 1e-9)
  return [low - room, high + room]
}
