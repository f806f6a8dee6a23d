import { scaleLinear, scaleLog } from 'd3-scale'
import type { CurveFigureOptions } from './curveData.ts'
import type { Domain } from './domain.ts'
import { palettes } from './palette.ts'
import type { Box, Sheet } from './sheet.ts'

/** The plot and its scales, handed to everything that draws inside it. */
export interface Stage extends Sheet {
  readonly plot: Box
  readonly domain: Domain
  /** Pixels of a sliding speed in m/s, held to the plot. */
  readonly x: (speed: number) => number
  /** Pixels of a friction value, held to the plot; what a logarithm can't show lies at the bottom. */
  readonly y: (friction: number) => number
}

const leftMargin = 74
const rightMargin = 104

export function stageOf(domain: Domain, top: number, options: CurveFigureOptions): Stage {
  const plot: Box = { left: leftMargin, right: options.width - rightMargin, top, bottom: top + options.plotHeight }
  const x = scaleLog()
    .domain([...domain.speed])
    .range([plot.left, plot.right])
    .clamp(true)
  const scale = domain.frictionLog ? scaleLog() : scaleLinear()
  const y = scale
    .domain([...domain.friction])
    .range([plot.bottom, plot.top])
    .clamp(true)
  return {
    palette: palettes[options.palette],
    id: options.id,
    width: options.width,
    plot,
    domain,
    x: (speed) => (speed > 0 ? x(speed) : plot.left),
    y: (friction) => (domain.frictionLog && !(friction > 0) ? plot.bottom : y(friction)),
  }
}
