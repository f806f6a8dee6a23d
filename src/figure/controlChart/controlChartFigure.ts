import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { levelLine, type Panel, panelAxis, panelOf, shortNumber } from '../panel.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf } from '../sheet.ts'
import { signMark } from '../signs.ts'
import { textWidth } from '../textWidth.ts'
import { alarmKey, alarmLetters } from './alarmKey.ts'
import { chartInWords } from './chartInWords.ts'
import type { ChartedAlarm, ControlChartData } from './controlChartData.ts'

export type ControlChartOptions = SheetOptions

const defaults: ControlChartOptions = { palette: 'light', width: 880, id: 'control-chart' }

const heights = { values: 210, ranges: 110, ewma: 140 } as const
const gap = 26
const labelHeight = 30

/** Individuals, moving ranges and weighted means below each other over the same places, with limits and alarms. */
export function controlChartFigure(data: ControlChartData, options: Partial<ControlChartOptions> = {}): Markup {
  const sheet = sheetOf({ ...defaults, ...options })
  const head = heading(data, sheet)
  const top = head.height + 22
  const box = (from: number, height: number): Box => ({
    left: 74,
    right: sheet.width - 118,
    top: from,
    bottom: from + height,
  })
  const valuesBox = box(top, heights.values)
  const rangesBox = box(valuesBox.bottom + gap, heights.ranges)
  const ewmaBox = data.ewma === null ? null : box(rangesBox.bottom + gap, heights.ewma)
  const bottom = (ewmaBox ?? rangesBox).bottom
  const place = placesOf(data, valuesBox)
  const parts = [
    head.markup,
    baselineShade(data, { ...valuesBox, bottom }, { place, sheet }),
    valuesPanel(data, valuesBox, { place, sheet }),
    rangesPanel(data, rangesBox, { place, sheet }),
    ewmaBox === null ? '' : ewmaPanel(data, ewmaBox, { place, sheet }),
    labels(data, bottom, { place, sheet }),
  ]
  const key = alarmKey(data, { left: 74, top: bottom + labelHeight + 14 }, sheet)
  const foot = footNote(data, { left: 16, top: bottom + labelHeight + 14 + key.height }, sheet)
  const height = bottom + labelHeight + 14 + key.height + foot.height + 12
  return picture({
    sheet,
    title: data.title,
    words: chartInWords(data),
    height,
    body: [...parts, key.markup, foot.markup],
  })
}

interface At {
  /** Pixels of a value's number, from 0. */
  readonly place: (index: number) => number
  readonly sheet: Sheet
}

function placesOf({ values }: ControlChartData, { left, right }: Box): At['place'] {
  const pitch = (right - left) / Math.max(1, values.length)
  return (index) => left + (index + 0.5) * pitch
}

/** The values behind the limits lie on a light ground, so that nobody takes them for a test of themselves. */
function baselineShade({ baseline, values }: ControlChartData, plot: Box, { place, sheet: { palette } }: At): Markup {
  if (baseline >= values.length) return ''
  const end = (place(baseline - 1) + place(baseline)) / 2
  return (
    element('rect', {
      x: plot.left,
      y: plot.top,
      width: end - plot.left,
      height: plot.bottom - plot.top,
      fill: palette.shade,
      'fill-opacity': 0.1,
    }) +
    lettering(`limits from these ${baseline}`, {
      x: plot.left + 6,
      y: plot.top - 7,
      fill: palette.quiet,
      size: sizes.small,
    })
  )
}

function valuesPanel(data: ControlChartData, plot: Box, at: At): Markup {
  const { centre, lower, upper, values } = data
  const panel = panelOf(plot, [lower, upper, ...values.map(({ value }) => value)], 0.12)
  const line = values.map(({ value }, i) => `${i === 0 ? 'M' : 'L'}${rounded(at.place(i))} ${rounded(panel.y(value))}`)
  return element(
    'g',
    {},
    panelAxis(panel, data.quantity, at.sheet),
    ...limitLines(panel, { centre, lower, upper }, at.sheet),
    element('path', { d: line.join(''), stroke: at.sheet.palette.accent, fill: 'none', 'stroke-width': 1.3 }),
    ...values.map(({ value }, i) => dot(at.place(i), panel.y(value), at.sheet)),
    ...alarmMarks(data, panel, at),
  )
}

function limitLines(
  panel: Panel,
  { centre, lower, upper }: { readonly centre: number; readonly lower: number; readonly upper: number },
  sheet: Sheet,
): readonly Markup[] {
  return [
    levelLine(panel, { value: upper, words: `upper ${shortNumber(upper)}`, dash: '7 4' }, sheet),
    levelLine(panel, { value: centre, words: `centre ${shortNumber(centre)}` }, sheet),
    levelLine(panel, { value: lower, words: `lower ${shortNumber(lower)}`, dash: '7 4' }, sheet),
  ]
}

const dot = (x: number, y: number, { palette }: Sheet): Markup =>
  element('circle', { cx: x, cy: y, r: 3.4, fill: palette.accent, stroke: palette.paper })

/** Above each value that completed a pattern stands the letter of its alarm; several stand above each other. */
function alarmMarks(data: ControlChartData, panel: Panel, { place, sheet }: At): readonly Markup[] {
  const letters = alarmLetters(data.alarms)
  const above = new Map<number, number>()
  return letters.map(({ alarm, letter }) => {
    const row = above.get(alarm.at) ?? 0
    above.set(alarm.at, row + 1)
    const high = panel.y(data.values[alarm.at].value)
    const up = high - panel.plot.top > 40 || high > (panel.plot.top + panel.plot.bottom) / 2
    const y = up ? high - 14 - 15 * row : high + 14 + 15 * row
    return signMark({ letter, weight: weightOf(alarm) }, { x: place(alarm.at), y }, sheet.palette)
  })
}

const weightOf = ({ state }: ChartedAlarm): 'stops' | 'note' => (state === 'open' ? 'stops' : 'note')

function rangesPanel(data: ControlChartData, plot: Box, at: At): Markup {
  const { movingRanges, rangeUpper } = data
  const panel = panelOf(plot, [0, rangeUpper, ...movingRanges], 0.08)
  const line = movingRanges.map(
    (range, i) => `${i === 0 ? 'M' : 'L'}${rounded(at.place(i + 1))} ${rounded(panel.y(range))}`,
  )
  return element(
    'g',
    {},
    panelAxis(panel, 'moving range', at.sheet),
    levelLine(panel, { value: rangeUpper, words: `upper ${shortNumber(rangeUpper)}`, dash: '7 4' }, at.sheet),
    element('path', { d: line.join(''), stroke: at.sheet.palette.accent, fill: 'none', 'stroke-width': 1.3 }),
    ...movingRanges.map((range, i) => dot(at.place(i + 1), panel.y(range), at.sheet)),
  )
}

function ewmaPanel(data: ControlChartData, plot: Box, at: At): Markup {
  const points = data.ewma ?? []
  const panel = panelOf(
    plot,
    points.flatMap(({ mean, lower, upper }) => [mean, lower, upper]),
    0.1,
  )
  const along = (pick: (point: (typeof points)[number]) => number): string =>
    points.map((point, i) => `${i === 0 ? 'M' : 'L'}${rounded(at.place(i))} ${rounded(panel.y(pick(point)))}`).join('')
  const { palette } = at.sheet
  const limit = { stroke: palette.ink, fill: 'none', 'stroke-width': 1.1, 'stroke-dasharray': '7 4' }
  return element(
    'g',
    {},
    panelAxis(panel, 'weighted mean', at.sheet),
    element('path', { d: along(({ lower }) => lower), ...limit }),
    element('path', { d: along(({ upper }) => upper), ...limit }),
    element('path', { d: along(({ mean }) => mean), stroke: palette.shared, fill: 'none', 'stroke-width': 1.8 }),
    ...points.flatMap(({ mean, lower, upper }, i) =>
      mean > upper || mean < lower
        ? [
            element('circle', {
              cx: at.place(i),
              cy: panel.y(mean),
              r: 4.2,
              fill: 'none',
              stroke: palette.stops,
              'stroke-width': 1.8,
            }),
          ]
        : [],
    ),
  )
}

/** As many labels as have room. */
function labels({ values }: ControlChartData, bottom: number, { place, sheet: { palette } }: At): Markup {
  const widest = Math.max(10, ...values.map(({ label }) => textWidth(label, sizes.small))) + 12
  const pitch = values.length > 1 ? place(1) - place(0) : widest
  const every = Math.max(1, Math.ceil(widest / pitch))
  return values
    .flatMap(({ label }, i) =>
      i % every === 0
        ? [lettering(label, { x: place(i), y: bottom + 18, fill: palette.quiet, size: sizes.small, anchor: 'middle' })]
        : [],
    )
    .join('')
}
