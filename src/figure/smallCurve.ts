import { scaleLinear, scaleLog } from 'd3-scale'
import type { Point } from '../core/terms/index.ts'
import { isDrawable } from './domain.ts'
import { element, escaped, type Markup, rounded } from './markup.ts'
import { type PaletteName, palettes } from './palette.ts'

/** A curve as small as a stamp: what a shelf of records shows. */
export interface SmallCurveData {
  readonly points: readonly Pick<Point, 'slidingSpeed' | 'friction' | 'trusted'>[]
  /** Places of the fitted curve, if there is one. */
  readonly line: readonly { readonly slidingSpeed: number; readonly friction: number }[]
  /** Axes that all curves of a shelf share, so that they can be compared; their own where left out. */
  readonly speeds?: readonly [number, number]
  readonly frictions?: readonly [number, number]
  /** Said to people who hear it. */
  readonly words: string
}

export interface SmallCurveOptions {
  readonly palette: PaletteName
  readonly width: number
  readonly height: number
}

/** Points and fit without axes or words, speed on a logarithm. Filled: used by the fit; hollow: left out. */
export function smallCurve(data: SmallCurveData, { palette: name, width, height }: SmallCurveOptions): Markup {
  const palette = palettes[name]
  const points = data.points.filter(isDrawable)
  const inset = 6
  const speeds = data.speeds ?? ends(points.map(({ slidingSpeed }) => slidingSpeed)) ?? [1e-3, 1]
  const frictions = data.frictions ?? ends(points.map(({ friction }) => friction)) ?? [0, 1]
  const x = scaleLog()
    .domain(apart(speeds))
    .range([inset, width - inset])
    .clamp(true)
  const y = scaleLinear()
    .domain(apart(frictions))
    .range([height - inset, inset])
    .clamp(true)
  const line = data.line
    .filter(({ slidingSpeed, friction }) => slidingSpeed > 0 && Number.isFinite(friction))
    .map((at, index) => `${index === 0 ? 'M' : 'L'}${rounded(x(at.slidingSpeed))} ${rounded(y(at.friction))}`)
    .join('')
  const dots = points.map(({ slidingSpeed, friction, trusted }) =>
    element('circle', {
      cx: x(slidingSpeed),
      cy: y(friction),
      r: 2.2,
      fill: trusted ? palette.ink : palette.paper,
      stroke: trusted ? undefined : palette.ink,
    }),
  )
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-label': data.words,
    },
    element('title', {}, escaped(data.words)),
    element('path', { d: `M0.5 0V${height - 0.5}H${width}`, stroke: palette.hairline, fill: 'none' }),
    line === '' ? '' : element('path', { d: line, stroke: palette.accent, 'stroke-width': 1.6, fill: 'none' }),
    ...dots,
  )
}

/** Ends that all of several curves fit between. */
export function smallCurveAxes(curves: readonly SmallCurveData[]): Pick<SmallCurveData, 'speeds' | 'frictions'> {
  const points = curves.flatMap(({ points: own }) => own.filter(isDrawable))
  return {
    speeds: ends(points.map(({ slidingSpeed }) => slidingSpeed)),
    frictions: ends(points.filter(({ trusted }) => trusted).map(({ friction }) => friction)),
  }
}

function ends(values: readonly number[]): readonly [number, number] | undefined {
  if (values.length === 0) return undefined
  let [low, high] = [values[0], values[0]]
  for (const value of values) {
    if (value < low) low = value
    if (value > high) high = value
  }
  return [low, high]
}

/** A scale needs two ends. */
const apart = ([low, high]: readonly [number, number]): [number, number] =>
  high > low ? [low, high] : [low / 1.1 - (low > 0 ? 0 : 1), low * 1.1 + (low > 0 ? 0 : 1)]
