import { speedAxis } from '../axes.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Sheet, SheetOptions } from '../sheet.ts'
import { type Stage, stageOf } from '../stage.ts'
import { linearTicks, logTicks, minorTicks, tickLabel } from '../ticks.ts'

/** What can be asked of a figure over speed. */
export interface PlaneOptions extends SheetOptions {
  /** Height of the plot alone in pixels, 160 to 1200. */
  readonly plotHeight: number
}

/** The axis at the left of a plane: friction, or a load in its unit. */
export interface LeftAxis {
  readonly title: string
  /** SI of one unit of the labels. */
  readonly size: number
  readonly range: readonly [number, number]
  readonly log: boolean
}

const planeMargins = { left: 74, right: 24 } as const

/** A plot with the logarithm of speed to the right. Throws RangeError for a height that no figure is made for. */
export function planeOf(
  speeds: readonly [number, number],
  { range, log }: LeftAxis,
  { top, options }: { readonly top: number; readonly options: PlaneOptions },
): Stage {
  if (!(options.plotHeight >= 160 && options.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 160 to 1200 px, got ${options.plotHeight} px`)
  }
  const domain = { speed: speeds, friction: range, frictionLog: log }
  return stageOf(domain, top, { ...options, margins: planeMargins })
}

/** Both axes with their labels, and the frame; hairlines at the labels of the left one. */
export function planeAxes(stage: Stage, { title, size, range, log }: LeftAxis): Markup {
  const { plot, palette, y } = stage
  const [low, high] = [range[0] / size, range[1] / size]
  const closest = (log ? 22 : 34) / (plot.bottom - plot.top)
  const labelled = log ? logTicks(low, high, closest) : linearTicks(low, high, closest)
  const small = log ? minorTicks(low, high) : []
  const rules = labelled.map((value) => `M${plot.left} ${rounded(y(value * size))}H${plot.right}`)
  const ticks = small.map((value) => `M${plot.left} ${rounded(y(value * size))}h-4`)
  const labels = labelled.map((value) =>
    lettering(tickLabel(value), {
      x: plot.left - 9,
      y: y(value * size) + 4,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'end',
    }),
  )
  const words = lettering(title, {
    x: 17,
    y: (plot.top + plot.bottom) / 2,
    fill: palette.ink,
    anchor: 'middle',
    turn: -90,
  })
  const frame = element('path', {
    d: `M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`,
    fill: 'none',
    stroke: palette.ink,
  })
  return element(
    'g',
    {},
    strokes(rules, palette.hairline),
    strokes(ticks, palette.quiet),
    ...labels,
    words,
    speedAxis(stage),
    frame,
  )
}

const strokes = (pieces: readonly string[], stroke: string): Markup =>
  pieces.length === 0 ? '' : element('path', { d: pieces.join(''), fill: 'none', stroke })

/** A letter in a small round, by which a picture and its key name a limit. */
export const limitSign = (sign: string, at: { readonly x: number; readonly y: number }, { palette }: Sheet): Markup =>
  element('circle', { cx: at.x, cy: at.y, r: 8, fill: palette.paper, stroke: palette.quiet }) +
  lettering(sign, { x: at.x, y: at.y + 4, fill: palette.ink, size: sizes.small, anchor: 'middle' })

/** Places of a line as an SVG path; gaps where a place is not finite. */
export function linePath(places: readonly (readonly [number, number])[]): string {
  let path = ''
  let pen = false
  for (const [x, y] of places) {
    const here = Number.isFinite(x) && Number.isFinite(y)
    if (here) path += `${pen ? 'L' : 'M'}${rounded(x)} ${rounded(y)}`
    pen = here
  }
  return path
}
