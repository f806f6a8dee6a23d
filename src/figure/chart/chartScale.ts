import { scaleLinear, scaleLog } from 'd3-scale'
import { linearTicks, logTicks, minorTicks } from '../ticks.ts'
import type { ChartAxis, ChartMark, ChartPanel } from './chartData.ts'

/** An axis laid over pixels. */
export interface ChartScale {
  /** Pixels of a value, held to the plot. */
  readonly at: (value: number) => number
  readonly range: readonly [number, number]
  readonly labelled: readonly number[]
  readonly minor: readonly number[]
}

/** Least distance of two labels in pixels. */
const closest = { x: 46, y: 20 } as const

/** Scale of one axis of a panel between two pixels. What a logarithm can't show lies at its low end. */
export function chartScale(panel: ChartPanel, which: 'x' | 'y', [from, to]: readonly [number, number]): ChartScale {
  const axis = panel[which]
  const [low, high] = rangeOf(axis, panel.marks, which)
  const scale = (axis.log ? scaleLog() : scaleLinear()).domain([low, high]).range([from, to]).clamp(true)
  const apart = closest[which] / Math.abs(to - from)
  return {
    at: (value) => (axis.log && !(value > 0) ? from : scale(value)),
    range: [low, high],
    labelled: axis.log ? logTicks(low, high, apart) : linearTicks(low, high, apart),
    minor: axis.log ? minorTicks(low, high) : [],
  }
}

function rangeOf(axis: ChartAxis, marks: readonly ChartMark[], which: 'x' | 'y'): readonly [number, number] {
  if (axis.range !== undefined) return axis.range
  const usable = (value: number): boolean => Number.isFinite(value) && (!axis.log || value > 0)
  const values = marks.flatMap((mark) => extentOf(mark, which)).filter(usable)
  if (values.length === 0) return axis.log ? [0.1, 1] : [0, 1]
  const low = values.reduce((a, b) => Math.min(a, b))
  const high = values.reduce((a, b) => Math.max(a, b))
  if (axis.log) {
    const margin = high > low ? (high / low) ** 0.06 : 1.2
    return [low / margin, high * margin]
  }
  const margin = high > low ? 0.06 * (high - low) : Math.max(1e-12, 0.1 * Math.abs(high))
  return [low - margin, high + margin]
}

function extentOf(mark: ChartMark, which: 'x' | 'y'): readonly number[] {
  switch (mark.kind) {
    case 'points':
      return mark.items.flatMap(({ x, y, low, high }) => (which === 'x' ? [x] : [y, low ?? y, high ?? y]))
    case 'line':
      return mark.items.map((item) => item[which])
    case 'band':
      return mark.items.flatMap(({ x, low, high }) => (which === 'x' ? [x] : [low, high]))
    case 'span':
      return which === 'x' ? [mark.from, mark.to] : []
    case 'level':
      return which === 'y' ? [mark.at] : []
  }
}
