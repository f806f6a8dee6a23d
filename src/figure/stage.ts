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

const curveMargins = { left: 74, right: 104 }

type StageOptions = Pick<CurveFigureOptions, 'palette' | 'id' | 'width' | 'plotHeight'> & {
  /** Pixels beside the plot; those of the curve figure where nothing is said. */
  readonly margins?: { readonly left: number; readonly right: number }
}

export function stageOf(domain: Domain, top: number, options: StageOptions): Stage {
  const { left, right } = options.margins ?? curveMargins
  const plot: Box = { left, right: options.width - right, top, bottom: top + options.plotHeight }
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
