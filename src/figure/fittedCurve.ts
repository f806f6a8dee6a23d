import { area, line } from 'd3-shape'
import type { BandPoint, Curve } from '../core/terms/index.ts'
import { element, type Markup } from './markup.ts'
import type { Stage } from './stage.ts'

/** The fitted curve and its 95 % band, as they come: no model is evaluated here. */
export function fittedCurve(curve: Curve | null, stage: Stage): Markup {
  const [slowest, fastest] = stage.domain.speed
  const inside = (speed: number): boolean => speed >= slowest && speed <= fastest
  const band = (curve?.band ?? []).filter((at) => inside(at.slidingSpeed) && Number.isFinite(at.friction))
  if (band.length < 2) return ''
  const { palette } = stage
  const edges = area<BandPoint>()
    .x((at) => stage.x(at.slidingSpeed))
    .y0((at) => stage.y(at.low))
    .y1((at) => stage.y(at.high))
    .digits(2)
  const middle = line<BandPoint>()
    .x((at) => stage.x(at.slidingSpeed))
    .y((at) => stage.y(at.friction))
    .digits(2)
  const closed = band.filter((at) => Number.isFinite(at.low) && Number.isFinite(at.high))
  return element(
    'g',
    {},
    element('path', { d: edges(closed) ?? '', fill: palette.accent, 'fill-opacity': palette.bandOpacity }),
    element('path', { d: middle(band) ?? '', fill: 'none', stroke: palette.accent, 'stroke-width': 1.8 }),
  )
}
