import type { MetrePerSecond } from '../../core/terms/index.ts'
import { speedAxisHeight } from '../axes.ts'
import { legend } from '../legend.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { footNote, heading, picture, sheetOf } from '../sheet.ts'
import type { Stage } from '../stage.ts'
import { textWidth } from '../textWidth.ts'
import { type FrictionWindowData, stepMarks } from './frictionWindow.ts'
import { type LeftAxis, linePath, type PlaneOptions, planeAxes, planeOf } from './plane.ts'

/** A speed at which a regime is expected to begin, with the interval in which it lies. */
export interface FigureBegin {
  readonly value: MetrePerSecond
  readonly low: MetrePerSecond
  readonly high: MetrePerSecond
}

/** The curve as the plan expects it, with what the data will be able to say about it. */
export interface PredictionData extends Omit<FrictionWindowData, 'borders'> {
  readonly mixedFrom: FigureBegin | null
  readonly fullFilmFrom: FigureBegin | null
}

const predictionDefaults: PlaneOptions = { palette: 'light', width: 880, plotHeight: 260, id: 'prediction' }

/** Friction on a plain axis, as the measured curve will be drawn. Equal data and options give equal bytes. */
export function predictionFigure(data: PredictionData, options: Partial<PlaneOptions> = {}): Markup {
  const chosen = { ...predictionDefaults, ...options }
  const head = heading(data, sheetOf(chosen))
  const speeds = [data.speeds[0], data.speeds[data.speeds.length - 1]] as const
  const most = Math.max(...Array.from(data.high))
  const axis: LeftAxis = { title: 'friction coefficient µ (1)', size: 1, range: [0, most * 1.08], log: false }
  const stage = planeOf(speeds, axis, { top: head.height + 24, options: chosen })
  const top = stage.plot.bottom + speedAxisHeight + 4
  const marks = legend(
    [
      { mark: 'curve', text: 'expected, and within which it is guessed' },
      ...(data.steps.length > 0 ? [{ mark: 'point' as const, text: 'planned step with its 95 % interval' }] : []),
    ],
    top,
    stage,
  )
  const foot = footNote(data, { left: stage.plot.left, top: top + marks.height }, stage)
  return picture({
    sheet: stage,
    title: data.title,
    words: wordsOf(data),
    height: top + marks.height + foot.height + 10,
    body: [
      head.markup,
      planeAxes(stage, axis),
      band(data, stage),
      begins(data, stage),
      stepMarks(data.steps, stage),
      marks.markup,
      foot.markup,
    ],
  })
}

function band({ speeds, friction, low, high }: PredictionData, { x, y, palette }: Stage): Markup {
  const places = (line: ArrayLike<number>): [number, number][] =>
    Array.from({ length: speeds.length }, (_, i) => [x(speeds[i]), y(line[i])])
  return (
    element('path', {
      d: `${linePath([...places(high), ...places(low).reverse()])}Z`,
      fill: palette.accent,
      'fill-opacity': palette.bandOpacity,
    }) + element('path', { d: linePath(places(friction)), stroke: palette.accent, 'stroke-width': 1.8, fill: 'none' })
  )
}

/** Where the regimes are expected to begin, each with its interval above the plot, and their names between. */
function begins({ mixedFrom, fullFilmFrom, speeds }: PredictionData, stage: Stage): Markup {
  const { plot, x, palette } = stage
  if (mixedFrom === null || fullFilmFrom === null) return ''
  const inside = ({ value }: FigureBegin): boolean => value > speeds[0] && value < speeds[speeds.length - 1]
  const lines = [mixedFrom, fullFilmFrom].filter(inside).map(({ value, low, high }) =>
    element('path', {
      d:
        `M${rounded(x(value))} ${plot.top - 6}V${plot.bottom}` +
        `M${rounded(x(low))} ${plot.top - 3}H${rounded(x(high))}`,
      stroke: palette.quiet,
      'stroke-dasharray': '2 3',
      fill: 'none',
    }),
  )
  const name = (text: string, from: number, to: number): Markup =>
    to - from < textWidth(text, sizes.small) + 8
      ? ''
      : lettering(text, {
          x: (from + to) / 2,
          y: plot.top - 10,
          fill: palette.quiet,
          size: sizes.small,
          anchor: 'middle',
          italic: true,
        })
  const [mixed, film] = [x(mixedFrom.value), x(fullFilmFrom.value)]
  return element(
    'g',
    {},
    ...lines,
    name('boundary', plot.left, mixed),
    name('mixed', mixed, film),
    name('full film', film, plot.right),
  )
}

function wordsOf({ speeds, friction, low, high, steps, mixedFrom, fullFilmFrom }: PredictionData): string {
  const two = (value: number): string => String(Number(value.toPrecision(2)))
  const at = (i: number): string =>
    `${two(friction[i])} (${two(low[i])} to ${two(high[i])}) at ${two(speeds[i] * 1000)} mm/s`
  const regimes =
    mixedFrom === null || fullFilmFrom === null
      ? 'No film is predicted.'
      : `Mixed friction from about ${two(mixedFrom.value * 1000)} mm/s, a full film from about ${two(fullFilmFrom.value * 1000)} mm/s.`
  return `Friction as expected: ${at(0)}, ${at(speeds.length >> 1)}, ${at(speeds.length - 1)}. ${regimes} ${steps.length} planned steps.`
}
