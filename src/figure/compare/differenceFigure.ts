import type { Comparison, ComparisonScale, SampleDifference } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { levelLine } from '../panel.ts'
import { footNote, heading, picture, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { tickLabel } from '../ticks.ts'
import { keyOf } from './key.ts'
import { areaBetween, barAt, lineThrough, type SpeedPanel, speedPanel } from './speedPanel.ts'
import { stretchLane } from './stretchLane.ts'

/** Two samples against each other over the speeds. */
export interface DifferenceFigureData extends Words, Pick<Comparison, 'speeds' | 'scale' | 'margin' | 'believable'> {
  readonly difference: SampleDifference
}

export interface DifferenceFigureOptions extends SheetOptions {
  /** Height of the plot alone in pixels, 160 to 1200. */
  readonly plotHeight: number
}

const defaults: DifferenceFigureOptions = { palette: 'light', width: 880, plotHeight: 300, id: 'difference' }

/**
 * The difference with the band that holds at all speeds at once, the interval of each speed alone inside it, the margin that matters,
 * and below the plot what is said of which stretch. Pure: equal data and options give equal bytes.
 */
export function differenceFigure(data: DifferenceFigureData, options: Partial<DifferenceFigureOptions> = {}): Markup {
  const chosen = { ...defaults, ...options }
  const sheet = { ...sheetOf(chosen), paletteName: chosen.palette }
  const { difference, scale, speeds } = data
  const head = heading(data, sheet)
  const [marginLow, marginHigh] = marginEnds(data)
  const on = speedPanel({
    ...{ sheet, speeds },
    top: head.height + 10,
    height: chosen.plotHeight,
    values: [...difference.low, ...difference.high, 0, marginLow, marginHigh].map((value) => shown(value, scale)),
    title: `${difference.second} against ${difference.first} (${scale === 'ratio' ? '%' : 'µ'})`,
    right: 118,
  })
  const lane = stretchLane(data, { top: on.bottom + 8, stage: on.stage })
  const key = keyOf(keyEntries(data), { left: 74, top: lane.bottom + 4, sheet })
  const foot = footNote(
    { title: '', note: [difference.sentence, data.note ?? ''].join(' ').trim() },
    { left: 74, top: key.bottom },
    sheet,
  )
  return picture({
    sheet,
    title: data.title,
    words: `${difference.sentence} ${laneWords(data)}`,
    height: lane.bottom + 4 + key.height + foot.height + 14,
    body: [head.markup, margin(data, on), on.markup, band(data, on), lane.markup, key.markup, foot.markup],
  })
}

const laneWords = ({ difference: { factor, p } }: DifferenceFigureData): string =>
  `The band is ${factor.toFixed(2)} standard errors to either side; the chance of so large a difference where there is none is ${p < 0.001 ? 'under 0.001' : p.toFixed(3)}.`

/** An effect as it is printed: in per cent, or in friction. */
const shown = (value: number, scale: ComparisonScale): number => (scale === 'ratio' ? 100 * value : value)

const marginEnds = ({ margin: size, scale }: DifferenceFigureData): readonly [number, number] =>
  scale === 'ratio' ? [1 / (1 + size) - 1, size] : [-size, size]

function margin(data: DifferenceFigureData, { panel, stage }: SpeedPanel): Markup {
  const { plot, palette } = stage
  const [low, high] = marginEnds(data).map((end) => panel.y(shown(end, data.scale)))
  const words = data.scale === 'ratio' ? `${tickLabel(100 * data.margin)} %` : tickLabel(data.margin)
  return (
    element('rect', {
      x: plot.left,
      y: high,
      width: plot.right - plot.left,
      height: low - high,
      fill: palette.shade,
      'fill-opacity': 0.14,
    }) +
    lettering(`margin ${words}`, { x: plot.right + 8, y: high + 4, fill: palette.quiet, size: sizes.small }) +
    levelLine(panel, { value: 0, words: 'no difference' }, stage)
  )
}

function band(data: DifferenceFigureData, on: SpeedPanel): Markup {
  const { stage, panel } = on
  const { palette } = stage
  const { speeds, scale } = data
  const lineOf = (name: 'value' | 'low' | 'high' | 'lowAlone' | 'highAlone'): number[] =>
    data.difference[name].map((value) => shown(value, scale))
  if (speeds.length === 1) {
    const x = stage.x(speeds[0])
    const ends = [panel.y(lineOf('low')[0]), panel.y(lineOf('high')[0])] as const
    return (
      barAt(x, ends, palette.accent) +
      element('circle', { cx: x, cy: panel.y(lineOf('value')[0]), r: 4, fill: palette.accent })
    )
  }
  const thin = { fill: 'none', stroke: palette.accent, 'stroke-width': 1, 'stroke-dasharray': '2 3' }
  return element(
    'g',
    {},
    element('path', {
      d: areaBetween(speeds, [lineOf('low'), lineOf('high')], on),
      fill: palette.accent,
      'fill-opacity': palette.bandOpacity,
      stroke: palette.accent,
      'stroke-width': 0.8,
    }),
    element('path', { d: lineThrough(speeds, lineOf('lowAlone'), on), ...thin }),
    element('path', { d: lineThrough(speeds, lineOf('highAlone'), on), ...thin }),
    element('path', {
      d: lineThrough(speeds, lineOf('value'), on),
      fill: 'none',
      stroke: palette.accent,
      'stroke-width': 2,
    }),
    notBelieved(data, on),
  )
}

/** Hatching over speeds at which not every record may be believed. */
function notBelieved({ believable, speeds }: DifferenceFigureData, { stage }: SpeedPanel): Markup {
  const { plot, palette } = stage
  const cover = (from: number, to: number): Markup =>
    to - from < 1
      ? ''
      : element('rect', {
          x: from,
          y: plot.top,
          width: to - from,
          height: plot.bottom - plot.top,
          fill: palette.paper,
          'fill-opacity': 0.55,
        }) +
        element('path', {
          d: `M${rounded(from)} ${plot.top}V${plot.bottom}M${rounded(to)} ${plot.top}V${plot.bottom}`,
          stroke: palette.shade,
          'stroke-dasharray': '4 3',
          fill: 'none',
        })
  if (believable === null) return ''
  const [first, last] = [speeds[0], speeds[speeds.length - 1]]
  const slow = believable.low > first * 1.02 ? cover(plot.left, stage.x(believable.low)) : ''
  const fast = believable.high < last / 1.02 ? cover(stage.x(believable.high), plot.right) : ''
  return slow + fast
}

function keyEntries({ speeds, believable }: DifferenceFigureData) {
  const pale =
    believable !== null && (believable.low > speeds[0] * 1.02 || believable.high < speeds[speeds.length - 1] / 1.02)
  return [
    { mark: 'band', text: '95 % band, all speeds at once' },
    ...(speeds.length > 1 ? [{ mark: 'dots', text: '95 % for one speed chosen beforehand' } as const] : []),
    { mark: 'shade', text: 'difference without meaning' },
    ...(pale ? [{ mark: 'pale', text: 'not every record to be believed' } as const] : []),
  ] as const
}
