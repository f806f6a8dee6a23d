import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Stage } from './stage.ts'
import { linearTicks, logTicks, minorTicks, tickLabel } from './ticks.ts'

/** Unit in which speeds are printed: the one that keeps most of the axis between 0.1 and 1000. */
export interface SpeedUnit {
  readonly text: string
  readonly metresPerSecond: number
}

export function speedUnit([low, high]: readonly [number, number]): SpeedUnit {
  const middle = Math.sqrt(low * high)
  if (middle < 3e-5) return { text: 'µm/s', metresPerSecond: 1e-6 }
  if (middle < 0.3) return { text: 'mm/s', metresPerSecond: 1e-3 }
  return { text: 'm/s', metresPerSecond: 1 }
}

/** Height below the plot that the speed axis takes. */
export const speedAxisHeight = 44

export function axes(stage: Stage): Markup {
  const { plot, palette } = stage
  const frame = element('path', {
    d: `M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`,
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 1,
  })
  return element('g', {}, speedAxis(stage), frictionAxis(stage), frame)
}

/** Ticks, labels and title of the speed axis below the plot. */
export function speedAxis(stage: Stage): Markup {
  const { plot, palette, x } = stage
  const [low, high] = stage.domain.speed
  const unit = speedUnit(stage.domain.speed)
  const size = unit.metresPerSecond
  const labelled = logTicks(low / size, high / size, 38 / (plot.right - plot.left))
  const small = minorTicks(low / size, high / size)
  const ticks = small.map((value) => `M${rounded(x(value * size))} ${plot.bottom}v4`)
  const long = labelled.map((value) => `M${rounded(x(value * size))} ${plot.bottom}v7`)
  const labels = labelled.map((value) =>
    lettering(tickLabel(value), {
      x: x(value * size),
      y: plot.bottom + 20,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'middle',
    }),
  )
  const title = lettering(`sliding speed (${unit.text})`, {
    x: (plot.left + plot.right) / 2,
    y: plot.bottom + 38,
    fill: palette.ink,
    anchor: 'middle',
  })
  return element('g', {}, strokes(ticks, palette.quiet), strokes(long, palette.ink), ...labels, title)
}

function frictionAxis(stage: Stage): Markup {
  const { plot, palette, y } = stage
  const [low, high] = stage.domain.friction
  const log = stage.domain.frictionLog
  const closest = (log ? 22 : 34) / (plot.bottom - plot.top)
  const labelled = log ? logTicks(low, high, closest) : linearTicks(low, high, closest)
  const small = log ? minorTicks(low, high) : []
  const ticks = small.map((value) => `M${plot.left} ${rounded(y(value))}h-4`)
  const rules = labelled.map((value) => `M${plot.left} ${rounded(y(value))}H${plot.right}`)
  const labels = labelled.map((value) =>
    lettering(tickLabel(value), {
      x: plot.left - 9,
      y: y(value) + 4,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'end',
    }),
  )
  const middle = (plot.top + plot.bottom) / 2
  const title = lettering('friction coefficient µ (1)', {
    x: 17,
    y: middle,
    fill: palette.ink,
    anchor: 'middle',
    turn: -90,
  })
  return element('g', {}, strokes(rules, palette.hairline), strokes(ticks, palette.quiet), ...labels, title)
}

const strokes = (pieces: readonly string[], colour: string): Markup =>
  pieces.length === 0 ? '' : element('path', { d: pieces.join(''), fill: 'none', stroke: colour, 'stroke-width': 1 })
