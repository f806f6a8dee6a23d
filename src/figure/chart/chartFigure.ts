import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Block, type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import { tickLabel } from '../ticks.ts'
import { type ChartData, type ChartMark, type ChartPanel, chartDefaults } from './chartData.ts'
import { type ChartStage, chartMark, toneColour, toneSign } from './chartMarks.ts'
import { type ChartScale, chartScale } from './chartScale.ts'

const margins = { left: 78, right: 24 } as const
const axisHeight = 44

/** Panels above each other, each with axes, marks and a legend of what has a label. Equal data give equal bytes. */
export function chartFigure(data: ChartData, options: Partial<SheetOptions> = {}): Markup {
  const sheet = sheetOf({ ...chartDefaults, ...options })
  const head = heading(data, sheet)
  const body: Markup[] = [head.markup]
  let y = head.height
  for (const panel of data.panels) {
    const drawn = panelOf(panel, y + 12, sheet)
    body.push(drawn.markup)
    y += 12 + drawn.height
  }
  const foot = footNote(data, { left: margins.left, top: y }, sheet)
  body.push(foot.markup)
  return picture({ sheet, title: data.title, words: data.words, height: y + foot.height + 12, body })
}

function panelOf(panel: ChartPanel, top: number, sheet: Sheet): Block {
  const height = panel.height ?? 220
  if (!(height >= 60 && height <= 1200)) throw new RangeError(`height must be 60 to 1200 px, got ${height} px`)
  const plot: Box = { left: margins.left, right: sheet.width - margins.right, top, bottom: top + height }
  const stage: ChartStage = {
    plot,
    palette: sheet.palette,
    x: chartScale(panel, 'x', [plot.left, plot.right]),
    y: chartScale(panel, 'y', [plot.bottom, plot.top]),
  }
  const key = legend(panel.marks, plot.bottom + axisHeight, { stage, sheet })
  const markup = element(
    'g',
    {},
    ...axis(panel, stage),
    ...panel.marks.map((mark) => chartMark(mark, stage)),
    frame(stage),
    key.markup,
  )
  return { markup, height: height + axisHeight + key.height }
}

const frame = ({ plot, palette }: ChartStage): Markup =>
  element('path', {
    d: `M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`,
    fill: 'none',
    stroke: palette.ink,
  })

function axis(panel: ChartPanel, { plot, x, y, palette }: ChartStage): readonly Markup[] {
  const strokes = (d: string, stroke: string): Markup => (d === '' ? '' : element('path', { d, fill: 'none', stroke }))
  const places = (scale: ChartScale, values: readonly number[]): readonly string[] =>
    values.map((value) => rounded(scale.at(value)))
  const small = { fill: palette.quiet, size: sizes.small } as const
  return [
    strokes(
      places(y, y.labelled)
        .map((at) => `M${plot.left} ${at}H${plot.right}`)
        .join(''),
      palette.hairline,
    ),
    strokes(
      places(x, x.minor)
        .map((at) => `M${at} ${plot.bottom}v4`)
        .join(''),
      palette.quiet,
    ),
    strokes(
      places(x, x.labelled)
        .map((at) => `M${at} ${plot.bottom}v7`)
        .join(''),
      palette.ink,
    ),
    ...x.labelled.map((value) =>
      lettering(tickLabel(value), { x: x.at(value), y: plot.bottom + 20, ...small, anchor: 'middle' }),
    ),
    ...y.labelled.map((value) =>
      lettering(tickLabel(value), { x: plot.left - 8, y: y.at(value) + 4, ...small, anchor: 'end' }),
    ),
    lettering(panel.x.title, {
      x: (plot.left + plot.right) / 2,
      y: plot.bottom + 38,
      fill: palette.ink,
      anchor: 'middle',
    }),
    lettering(panel.y.title, {
      x: 17,
      y: (plot.top + plot.bottom) / 2,
      fill: palette.ink,
      anchor: 'middle',
      turn: -90,
    }),
  ]
}

type Labelled = ChartMark & { readonly kind: 'points' | 'line' | 'band' | 'span' }

const isLabelled = (mark: ChartMark): mark is Labelled => mark.kind !== 'level' && mark.label !== undefined

function legend(
  marks: readonly ChartMark[],
  top: number,
  { stage, sheet }: { stage: ChartStage; sheet: Sheet },
): Block {
  const entries = marks.filter(isLabelled)
  if (entries.length === 0) return { markup: '', height: 0 }
  let x = stage.plot.left
  let y = top + 12
  const pieces: Markup[] = []
  for (const entry of entries) {
    const label = entry.label ?? ''
    const wide = 28 + textWidth(label, sizes.small)
    if (x > stage.plot.left && x + wide > sheet.width - 16) {
      x = stage.plot.left
      y += 19
    }
    pieces.push(swatch(entry, { x, y }, stage))
    pieces.push(lettering(label, { x: x + 26, y: y + 4, fill: stage.palette.quiet, size: sizes.small }))
    x += wide + 22
  }
  return { markup: element('g', {}, ...pieces), height: y - top + 14 }
}

function swatch(mark: Labelled, { x, y }: { x: number; y: number }, { palette }: ChartStage): Markup {
  const colour = toneColour(mark.tone, palette)
  if (mark.kind === 'points')
    return toneSign({ x: x + 10, y }, { tone: mark.tone, hollow: mark.hollow === true }, palette)
  if (mark.kind === 'line') {
    const dash = mark.dashed === true ? '6 4' : undefined
    return element('path', {
      d: `M${rounded(x)} ${rounded(y)}h20`,
      stroke: colour,
      'stroke-width': 1.8,
      'stroke-dasharray': dash,
      fill: 'none',
    })
  }
  const opacity = mark.kind === 'band' ? palette.bandOpacity : 0.16
  return element('rect', { x, y: y - 6, width: 20, height: 12, fill: colour, 'fill-opacity': opacity })
}
