import type { BandPoint, Point } from '../core/terms/index.ts'
import type { CurveFigureData, CurveFigureOptions } from './curveData.ts'

/** Ranges of the two axes. Speed is always on a logarithm. */
export interface Domain {
  readonly speed: readonly [number, number]
  readonly friction: readonly [number, number]
  readonly frictionLog: boolean
}

/** Beyond these no axis makes sense: a friction coefficient, and a sliding speed in m/s. */
const largest = { friction: 1e6, speed: 1e6 }
const smallest = { friction: 1e-9, speed: 1e-12 }

/** A speed that has a place on the axis. */
export const hasPlace = (speed: number): boolean => speed >= smallest.speed && speed <= largest.speed

/** A point that can be drawn: a speed over zero and a friction value, both of a size that makes sense. */
export const isDrawable = <P extends Pick<Point, 'slidingSpeed' | 'friction'>>(
  point: P,
): point is P & { readonly friction: number } =>
  hasPlace(point.slidingSpeed) && point.friction !== null && Math.abs(point.friction) <= largest.friction

/** Ends of a point's own interval, where it has one. */
export function ownEnds(point: Point): { readonly low: number; readonly high: number } | undefined {
  const low = point.low ?? Number.NaN
  const high = point.high ?? Number.NaN
  return low <= high ? { low, high } : undefined
}

/** How far a bar or band may stretch the axis beyond the friction values themselves. */
const stretch = 2

const logFrom = 2.5

/** The axes cover all points; bars and band too, unless they are so long that the values would be squeezed. */
export function domainOf(data: CurveFigureData, wanted: CurveFigureOptions['frictionAxis']): Domain {
  const drawable = data.points.filter(isDrawable)
  const speeds = data.points.map((point) => point.slidingSpeed).filter(hasPlace)
  const band = data.curve?.band ?? []
  const values = drawable.map((point) => point.friction)
  if (values.length === 0)
    return { speed: padded(extent(speeds) ?? [1e-3, 1e-1], 1.4), friction: [0, 1], frictionLog: false }
  const [least, most] = extent(values) ?? [0.1, 1]
  const log =
    wanted === 'log'
      ? most > smallest.friction
      : wanted === 'auto' && least > smallest.friction && most / least >= logFrom
  const ends = [...endsOf(drawable, band), ...biasEnds(data)]
  const speed = padded(extent(speeds) ?? [1e-3, 1e-1], 1.25)
  return { speed, friction: log ? logRange(values, ends) : linearRange(values, ends), frictionLog: log }
}

function endsOf(points: readonly Point[], band: readonly BandPoint[]): readonly number[] {
  const bars = points.flatMap((point) => [point.low, point.high])
  const edges = band.flatMap((at) => [at.low, at.high])
  return [...bars, ...edges].filter((end): end is number => end !== null && Number.isFinite(end))
}

function biasEnds({ points, window }: CurveFigureData): readonly number[] {
  return (window?.partialTurnBias ?? []).flatMap(({ step, bound }) => {
    const friction = points.find((point) => point.step === step)?.friction ?? Number.NaN
    return [friction * (1 - bound), friction * (1 + bound)]
  })
}

function logRange(values: readonly number[], ends: readonly number[]): readonly [number, number] {
  const [least, most] = extent(values.filter((value) => value > smallest.friction)) ?? [0.1, 1]
  const inside = ends.filter((end) => end >= least / stretch && end <= most * stretch)
  const [low, high] = extent([...inside, least, most]) ?? [least, most]
  const margin = Math.max(1.06, (high / low) ** 0.08)
  return [low / margin, high * margin]
}

function linearRange(values: readonly number[], ends: readonly number[]): readonly [number, number] {
  const [least, most] = extent(values) ?? [0, 1]
  const reach = (most - least || Math.abs(most) || 1) * stretch
  const inside = ends.filter((end) => end >= least - reach && end <= most + reach)
  const [low, high] = extent([...inside, least, most]) ?? [least, most]
  // Equal values get room too, and a span that a double can still divide into ticks.
  const margin = Math.max(0.1 * (high - low), 1e-3 * Math.abs(high), smallest.friction)
  return [low - margin, high + margin]
}

/** Least and greatest of the finite values. */
function extent(values: readonly number[]): readonly [number, number] | undefined {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const value of values) {
    if (!Number.isFinite(value)) continue
    if (value < low) low = value
    if (value > high) high = value
  }
  return low <= high ? [low, high] : undefined
}

const padded = ([low, high]: readonly [number, number], factor: number): readonly [number, number] => [
  low / factor,
  high * factor,
]
