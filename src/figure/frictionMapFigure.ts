import { scaleLog } from 'd3-scale'
import { lettering, sizes } from './lettering.ts'
import { element, escaped, type Markup, rounded } from './markup.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from './sheet.ts'
import { logTicks, tickLabel } from './ticks.ts'
import { cellImage, mapFrame } from './turnMap/cellImage.ts'
import { colourBar, colourGradient } from './turnMap/colourBar.ts'
import { colourStops } from './turnMap/colourScale.ts'
import { hatching } from './windowShade.ts'

/** Friction over speed and load. Speeds in m/s and loads in N are middles, even in their logarithm; NaN is an empty cell. */
export interface FrictionMapFigureData extends Words {
  readonly speeds: readonly number[]
  readonly loads: readonly number[]
  /** Row by row, the smallest load first. */
  readonly friction: ArrayLike<number>
  readonly data: readonly { readonly slidingSpeed: number; readonly load: number; readonly friction: number }[]
}

export interface FrictionMapFigureOptions extends SheetOptions {
  readonly plotHeight: number
}

const defaults: FrictionMapFigureOptions = { palette: 'light', width: 880, plotHeight: 300, id: 'map' }
const margins = { left: 66, bar: 86, gap: 22 } as const
const axisHeight = 44

/** Speed across, load up, friction as colour; a ring at every place that was measured, and nothing where no data lie around. */
export function frictionMapFigure(
  data: FrictionMapFigureData,
  options: Partial<FrictionMapFigureOptions> = {},
): Markup {
  const chosen = { ...defaults, ...options }
  if (!(chosen.plotHeight >= 80 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 80 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const top = head.height + 12
  const right = sheet.width - margins.bar - margins.gap
  const plot: Box = { left: margins.left, right, top, bottom: top + chosen.plotHeight }
  const bar: Box = {
    left: sheet.width - margins.bar,
    right: sheet.width - margins.bar + 14,
    top: top + 32,
    bottom: plot.bottom,
  }
  const [x, y] = [axisOf(data.speeds, [plot.left, plot.right]), axisOf(data.loads, [plot.bottom, plot.top])]
  const stops = colourStops(chosen.palette)
  const range = rangeOf(data.friction)
  const map = { columns: data.speeds.length, rows: data.loads.length, turns: [], mean: upsideDown(data), range }
  const note = ['Between the rings friction is interpolated; outside them nothing is said.', data.note ?? '']
  const foot = footNote(
    { title: '', note: note.join(' ').trim() },
    { left: plot.left, top: plot.bottom + axisHeight },
    sheet,
  )
  const empty = element('rect', {
    x: plot.left,
    y: plot.top,
    width: plot.right - plot.left,
    height: plot.bottom - plot.top,
    fill: `url(#${sheet.id}-hatch)`,
  })
  const body = [
    head.markup,
    empty,
    cellImage(map, stops, plot),
    mapFrame(plot, sheet.palette.ink),
    ...rings(data, { x: x.place, y: y.place }, sheet),
    axes({ x, y, plot }, sheet),
    colourBar({ data: { title: '', map, quantity: 'friction' }, box: bar, beyond: [false, false] }, sheet),
    foot.markup,
  ]
  return picture({
    sheet,
    title: data.title,
    words: inWords(data, range),
    height: plot.bottom + axisHeight + foot.height + 12,
    defs: [hatching(sheet), colourGradient(stops, sheet.id)],
    body,
  })
}

interface MapAxis {
  readonly place: (value: number) => number
  readonly low: number
  readonly high: number
}

/** Half a cell of room on either side, so that the middle of a cell lies at its value. */
function axisOf(middles: readonly number[], range: readonly [number, number]): MapAxis {
  const last = middles.length - 1
  const half = last > 0 ? (middles[last] / middles[0]) ** (0.5 / last) : 1.1
  const [low, high] = [middles[0] / half, middles[last] * half]
  const scale = scaleLog()
    .domain([low, high])
    .range([...range])
  return { place: (value) => scale(value), low, high }
}

/** The image has its first row at the top. */
function upsideDown({ speeds, loads, friction }: FrictionMapFigureData): Float64Array {
  const [columns, rows] = [speeds.length, loads.length]
  return Float64Array.from(
    { length: columns * rows },
    (_, cell) => friction[(rows - 1 - Math.floor(cell / columns)) * columns + (cell % columns)],
  )
}

function rangeOf(values: ArrayLike<number>): readonly [number, number] | null {
  const finite = Array.from(values).filter(Number.isFinite)
  return finite.length === 0 ? null : [Math.min(...finite), Math.max(...finite)]
}

function rings(
  { data }: FrictionMapFigureData,
  { x, y }: { readonly x: (speed: number) => number; readonly y: (load: number) => number },
  { palette }: Sheet,
): Markup[] {
  return data.map(({ slidingSpeed, load, friction }) =>
    element(
      'g',
      {},
      element('title', {}, escaped(`${three(slidingSpeed * 1000)} mm/s, ${three(load)} N: µ = ${three(friction)}`)),
      element('circle', {
        cx: x(slidingSpeed),
        cy: y(load),
        r: 3.6,
        fill: 'none',
        stroke: palette.paper,
        'stroke-width': 3,
      }),
      element('circle', {
        cx: x(slidingSpeed),
        cy: y(load),
        r: 3.6,
        fill: 'none',
        stroke: palette.ink,
        'stroke-width': 1.2,
      }),
    ),
  )
}

function axes(
  { x, y, plot }: { readonly x: MapAxis; readonly y: MapAxis; readonly plot: Box },
  { palette }: Sheet,
): Markup {
  const across = logTicks(x.low * 1000, x.high * 1000, 44 / (plot.right - plot.left))
  const up = logTicks(y.low, y.high, 24 / (plot.bottom - plot.top))
  const small = { fill: palette.quiet, size: sizes.small }
  const strokes = [
    ...across.map((tick) => `M${rounded(x.place(tick / 1000))} ${plot.bottom}v6`),
    ...up.map((tick) => `M${plot.left} ${rounded(y.place(tick))}h-6`),
  ]
  return element(
    'g',
    {},
    element('path', { d: strokes.join(''), stroke: palette.ink, fill: 'none' }),
    ...across.map((tick) =>
      lettering(tickLabel(tick), { ...small, x: x.place(tick / 1000), y: plot.bottom + 20, anchor: 'middle' }),
    ),
    ...up.map((tick) =>
      lettering(tickLabel(tick), { ...small, x: plot.left - 9, y: y.place(tick) + 4, anchor: 'end' }),
    ),
    lettering('sliding speed (mm/s)', {
      x: (plot.left + plot.right) / 2,
      y: plot.bottom + 38,
      fill: palette.ink,
      anchor: 'middle',
    }),
    lettering('axial force (N)', {
      x: 17,
      y: (plot.top + plot.bottom) / 2,
      fill: palette.ink,
      anchor: 'middle',
      turn: -90,
    }),
  )
}

const three = (value: number): string => tickLabel(Number(value.toPrecision(3)))

function inWords({ speeds, loads, data }: FrictionMapFigureData, range: readonly [number, number] | null): string {
  if (range === null) return 'No friction could be put between the data.'
  return `Friction over sliding speeds from ${three(speeds[0] * 1000)} to ${three(speeds[speeds.length - 1] * 1000)} mm/s and axial forces from ${three(loads[0])} to ${three(loads[loads.length - 1])} N: from ${three(range[0])} to ${three(range[1])}, between ${data.length} measured places.`
}
