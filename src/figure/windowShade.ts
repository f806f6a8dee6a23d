import type { BelievableWindow, Point } from '../core/terms/index.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Sheet } from './sheet.ts'
import type { Stage } from './stage.ts'

/** Hatching over measured speeds that may not be believed; the whole plot where no window is left. */
export function windowShade(window: BelievableWindow | null, points: readonly Point[], stage: Stage): Markup {
  if (window === null) return ''
  const { plot } = stage
  if (window.low === null || window.high === null) return shade(plot.left, plot.right, stage)
  const { low, high } = window
  const slower = points.some(({ slidingSpeed }) => slidingSpeed < low)
  const faster = points.some(({ slidingSpeed }) => slidingSpeed > high)
  return (slower ? shade(plot.left, stage.x(low), stage) : '') + (faster ? shade(stage.x(high), plot.right, stage) : '')
}

/** Pattern that the hatching refers to. */
export const hatching = ({ id, palette }: Sheet): Markup =>
  element(
    'pattern',
    { id: `${id}-hatch`, width: 7, height: 7, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
    element('path', { d: 'M0 0V7', stroke: palette.shade, 'stroke-width': 1, 'stroke-opacity': 0.55 }),
  )

function shade(from: number, to: number, stage: Stage): Markup {
  if (!(to - from > 0.5)) return ''
  const { plot, palette, id } = stage
  const box = { x: from, y: plot.top, width: to - from, height: plot.bottom - plot.top }
  const inner = from <= plot.left ? to : from
  const edge = inner >= plot.right || inner <= plot.left ? '' : `M${rounded(inner)} ${plot.top}V${plot.bottom}`
  return element(
    'g',
    {},
    element('rect', { ...box, fill: palette.shade, 'fill-opacity': 0.09 }),
    element('rect', { ...box, fill: `url(#${id}-hatch)` }),
    edge === '' ? '' : element('path', { d: edge, stroke: palette.shade, 'stroke-width': 1.2, fill: 'none' }),
  )
}
