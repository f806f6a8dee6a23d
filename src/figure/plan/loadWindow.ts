import type { MetrePerSecond, Newton } from '../../core/terms/index.ts'
import { speedAxisHeight } from '../axes.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Box, footNote, heading, picture, sheetOf } from '../sheet.ts'
import type { Stage } from '../stage.ts'
import { hatching } from '../windowShade.ts'
import { type FigureLimit, limitKey } from './limitKey.ts'
import { loadCells } from './loadCells.ts'
import type { LoadWindowData } from './loadWindowData.ts'
import { type LeftAxis, type PlaneOptions, planeAxes, planeOf } from './plane.ts'

const loadWindowDefaults: PlaneOptions = { palette: 'light', width: 880, plotHeight: 340, id: 'loadWindow' }

/** Where speeds and loads lie in the picture: for handles laid over it. Pixels of the figure's own width. */
export interface LoadWindowPlaces {
  readonly plot: Box
  readonly x: (speed: MetrePerSecond) => number
  readonly y: (load: Newton) => number
  readonly speedAt: (x: number) => MetrePerSecond
  readonly loadAt: (y: number) => Newton
}

const axisOf = ({ loads }: LoadWindowData): LeftAxis => ({
  title: 'axial force (N)',
  size: 1,
  range: [loads[0], loads[loads.length - 1]],
  log: true,
})

function stageFor(data: LoadWindowData, chosen: PlaneOptions): Stage {
  const { height } = heading(data, sheetOf(chosen))
  const speeds = [data.speeds[0], data.speeds[data.speeds.length - 1]] as const
  return planeOf(speeds, axisOf(data), { top: height + 6, options: chosen })
}

/** The places of `loadWindowFigure` with the same data and options. */
export function loadWindowPlaces(data: LoadWindowData, options: Partial<PlaneOptions> = {}): LoadWindowPlaces {
  const { plot, x, y, domain } = stageFor(data, { ...loadWindowDefaults, ...options })
  const between = ([low, high]: readonly [number, number], share: number): number =>
    low * (high / low) ** Math.min(1, Math.max(0, share))
  return {
    plot,
    x,
    y,
    speedAt: (at) => between(domain.speed, (at - plot.left) / (plot.right - plot.left)),
    loadAt: (at) => between(domain.friction, (plot.bottom - at) / (plot.bottom - plot.top)),
  }
}

/** Speed to the right, load upwards, both on logarithms. Equal data and options give equal bytes. */
export function loadWindowFigure(data: LoadWindowData, options: Partial<PlaneOptions> = {}): Markup {
  const chosen = { ...loadWindowDefaults, ...options }
  const stage = stageFor(data, chosen)
  const { plot } = stage
  const { markup: cells, shown } = loadCells(data, stage)
  const key = limitKey(shown, { left: plot.left, top: plot.bottom + speedAxisHeight + 4 }, stage)
  const bottom = plot.bottom + speedAxisHeight + 4 + key.height
  const foot = footNote(data, { left: plot.left, top: bottom }, stage)
  return picture({
    sheet: stage,
    title: data.title,
    words: wordsOf(data, shown),
    height: bottom + foot.height + 10,
    defs: [hatching(stage)],
    body: [
      heading(data, stage).markup,
      planeAxes(stage, axisOf(data)),
      cells,
      plannedMarks(data, stage),
      key.markup,
      foot.markup,
    ],
  })
}

/** The planned load as a line from the slowest to the fastest step, each step a tick on it. */
function plannedMarks({ planned }: LoadWindowData, { x, y, palette, plot }: Stage): Markup {
  if (planned === null) return ''
  const at = y(planned.load)
  const whole = element('path', {
    d: `M${plot.left} ${rounded(at)}H${plot.right}`,
    stroke: palette.accent,
    'stroke-dasharray': '2 4',
    fill: 'none',
  })
  if (planned.steps.length === 0) return whole
  const places = planned.steps.map(x)
  const ticks = places.map((place) => `M${rounded(place)} ${rounded(at - 5)}v10`).join('')
  const line = `M${rounded(Math.min(...places))} ${rounded(at)}H${rounded(Math.max(...places))}`
  const load = `${Number(planned.load.toPrecision(3))} N`
  return (
    whole +
    element('path', { d: line, stroke: palette.accent, 'stroke-width': 3, fill: 'none' }) +
    element('path', { d: ticks, stroke: palette.accent, 'stroke-width': 1.4, fill: 'none' }) +
    lettering(load, {
      x: plot.right - 4,
      y: at - 7,
      fill: palette.accent,
      size: sizes.text,
      weight: 600,
      anchor: 'end',
    })
  )
}

function wordsOf({ planned, cells }: LoadWindowData, shown: readonly FigureLimit[]): string {
  const free = Array.from({ length: cells.length }, (_, i) => cells[i]).filter((cell) => cell === 0).length
  const share = Math.round((100 * free) / Math.max(1, cells.length))
  const steps = planned === null ? 'Nothing is planned.' : plannedWords(planned)
  const limits = shown.length === 0 ? '' : ` What forbids the rest: ${shown.map(({ words }) => words).join('; ')}.`
  return `Speed against load: friction can be measured in ${share} % of the picture. ${steps}${limits}`
}

const plannedWords = ({ load, steps }: NonNullable<LoadWindowData['planned']>): string =>
  steps.length === 0
    ? `Planned load ${Number(load.toPrecision(3))} N, but no speed can be measured there.`
    : `Planned: ${steps.length} steps at ${Number(load.toPrecision(3))} N from ${mm(Math.min(...steps))} to ${mm(Math.max(...steps))} mm/s.`

const mm = (speed: MetrePerSecond): string => String(Number((speed * 1000).toPrecision(3)))
