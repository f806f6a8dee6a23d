import type { BelievableWindow, Point } from '../core/terms/index.ts'
import { speedUnit } from './axes.ts'
import { hasPlace, isDrawable, ownEnds } from './domain.ts'
import { element, escaped, type Markup, rounded } from './markup.ts'
import type { Palette } from './palette.ts'
import type { Spot } from './signs.ts'
import type { Stage } from './stage.ts'
import { tickLabel } from './ticks.ts'

/** Every point with its own 95 % bar; hollow where the curve was not fitted through it. A step without friction is a small cross on the axis. */
export function pointMarks(points: readonly Point[], stage: Stage): Markup {
  // Falling ones below: where up and down agree, the corners of the square still show around the disc.
  const ordered = [...points].sort((a, b) => a.direction - b.direction)
  return element('g', { 'stroke-width': 1.2 }, ...ordered.map((point) => mark(point, stage)))
}

function mark(point: Point, stage: Stage): Markup {
  const title = element('title', {}, escaped(pointInWords(point, stage)))
  if (!hasPlace(point.slidingSpeed)) return ''
  const { palette, plot } = stage
  const x = stage.x(point.slidingSpeed)
  if (!isDrawable(point)) {
    const y = plot.bottom - 8
    const cross = `M${rounded(x - 4)} ${y - 4}l8 8m0 -8l-8 8`
    return element(
      'g',
      {},
      title,
      element('path', { d: cross, fill: 'none', stroke: palette.stops, 'stroke-width': 1.6 }),
    )
  }
  const y = stage.y(point.friction)
  const dot = pointDot({ x, y }, point, palette)
  return element('g', {}, title, ownBar(point, x, stage), dot)
}

/** Round where the speed rises from the step before, square where it falls; hollow where the fit leaves the point out. */
export function pointDot({ x, y }: Spot, point: Pick<Point, 'direction' | 'trusted'>, palette: Palette): Markup {
  const fill = point.trusted ? palette.ink : palette.paper
  // A halo lifts a disc off the square below it.
  const halo = point.trusted ? palette.paper : palette.ink
  return point.direction === 1
    ? element('circle', { cx: x, cy: y, r: 4.2, fill, stroke: halo })
    : element('rect', { x: x - 4.4, y: y - 4.4, width: 8.8, height: 8.8, fill, stroke: palette.ink })
}

/** Ends of the bar carry a cap unless the bar leaves the plot there. */
function ownBar(point: Point, x: number, stage: Stage): Markup {
  const ends = ownEnds(point)
  if (ends === undefined) return ''
  const { plot } = stage
  const low = stage.y(ends.low)
  const high = stage.y(ends.high)
  const lowCap = low < plot.bottom ? `M${rounded(x - 3.5)} ${rounded(low)}h7` : ''
  const highCap = high > plot.top ? `M${rounded(x - 3.5)} ${rounded(high)}h7` : ''
  return element('path', {
    d: `M${rounded(x)} ${rounded(low)}V${rounded(high)}${lowCap}${highCap}`,
    fill: 'none',
    stroke: stage.palette.ink,
  })
}

/** The bias that a partial turn may leave, as a pale bar behind the point; none where it would be too small to see. */
export function biasBars(points: readonly Point[], window: BelievableWindow | null, stage: Stage): readonly Markup[] {
  return (window?.partialTurnBias ?? []).flatMap(({ step, bound }) => {
    const point = points.find((one) => one.step === step)
    if (point === undefined || !isDrawable(point) || !(bound > 0)) return []
    const reach = bound * Math.abs(point.friction)
    const top = stage.y(point.friction + reach)
    const height = stage.y(point.friction - reach) - top
    // What the mark of the point covers need not be drawn.
    if (height < 9) return []
    return [element('rect', { x: stage.x(point.slidingSpeed) - 5.5, y: top, width: 11, height })]
  })
}

export const biasMarks = (bars: readonly Markup[], stage: Stage): Markup =>
  bars.length === 0 ? '' : element('g', { fill: stage.palette.bias, 'fill-opacity': 0.45 }, ...bars)

function pointInWords(point: Point, stage: Stage): string {
  const unit = speedUnit(stage.domain.speed)
  const speed = `Step ${point.step}: ${tickLabel(significant(point.slidingSpeed / unit.metresPerSecond, 4))} ${unit.text}`
  const remarks = point.remarks.map((remark) => remark.sentence)
  if (point.friction === null) return [`${speed}, no friction value.`, ...remarks].join(' ')
  const ends = ownEnds(point)
  const interval = ends === undefined ? '' : `, 95 % from ${five(ends.low)} to ${five(ends.high)} (own part)`
  return [`${speed}, µ = ${five(point.friction)}${interval}.`, ...remarks].join(' ')
}

const five = (value: number): string => tickLabel(significant(value, 5))
const significant = (value: number, digits: number): number => Number(value.toPrecision(digits))
