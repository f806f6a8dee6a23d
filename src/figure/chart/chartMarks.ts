import { lettering, sizes } from '../lettering.ts'
import { element, escaped, type Markup, rounded } from '../markup.ts'
import type { Palette } from '../palette.ts'
import type { Box } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import type { ChartMark, ChartPoint, Tone } from './chartData.ts'
import type { ChartScale } from './chartScale.ts'

/** Where a mark is drawn. */
export interface ChartStage {
  readonly plot: Box
  readonly x: ChartScale
  readonly y: ChartScale
  readonly palette: Palette
}

/** Colour of a tone on a page. */
export function toneColour(tone: Tone, palette: Palette): string {
  const colours: Readonly<Record<Tone, string>> = {
    accent: palette.accent,
    blue: palette.shared,
    red: palette.stops,
    orange: palette.caution,
    purple: palette.bias,
    ink: palette.ink,
    quiet: palette.shade,
  }
  return colours[tone]
}

/** One mark of a panel. */
export function chartMark(mark: ChartMark, stage: ChartStage): Markup {
  const { plot, x, y, palette } = stage
  switch (mark.kind) {
    case 'points':
      return element('g', { 'stroke-width': 1.2 }, ...mark.items.map((item) => pointMark(item, mark, stage)))
    case 'line':
      return element('path', {
        d: pathOf(mark.items.map((item) => [x.at(item.x), y.at(item.y)])),
        fill: 'none',
        stroke: toneColour(mark.tone, palette),
        'stroke-width': 1.8,
        'stroke-dasharray': mark.dashed === true ? '6 4' : undefined,
      })
    case 'band': {
      const above = mark.items.map((item) => [x.at(item.x), y.at(item.high)] as const)
      const below = mark.items.map((item) => [x.at(item.x), y.at(item.low)] as const).reverse()
      return element('path', {
        d: `${pathOf([...above, ...below])}Z`,
        fill: toneColour(mark.tone, palette),
        'fill-opacity': palette.bandOpacity,
      })
    }
    case 'span': {
      const [left, right] = [x.at(mark.from), x.at(mark.to)]
      return element('rect', {
        x: Math.min(left, right),
        y: plot.top,
        width: Math.abs(right - left),
        height: plot.bottom - plot.top,
        fill: toneColour(mark.tone, palette),
        'fill-opacity': 0.16,
      })
    }
    case 'level':
      return level(mark.at, mark.words, stage)
  }
}

function level(at: number, words: string, { plot, y, palette }: ChartStage): Markup {
  const place = y.at(at)
  const wide = textWidth(words, sizes.small) + 8
  return (
    element('path', {
      d: `M${plot.left} ${rounded(place)}H${plot.right}`,
      stroke: palette.quiet,
      'stroke-dasharray': '3 3',
      fill: 'none',
    }) +
    element('rect', {
      x: plot.right - wide - 2,
      y: place - 17,
      width: wide,
      height: 15,
      fill: palette.paper,
      'fill-opacity': 0.8,
    }) +
    lettering(words, { x: plot.right - 6, y: place - 5, fill: palette.quiet, size: sizes.small, anchor: 'end' })
  )
}

type Points = Extract<ChartMark, { kind: 'points' }>

function pointMark(item: ChartPoint, { tone, hollow }: Points, { x, y, palette, plot }: ChartStage): Markup {
  if (!Number.isFinite(item.x) || !Number.isFinite(item.y)) return ''
  const place = x.at(item.x)
  const colour = toneColour(tone, palette)
  const ends =
    item.low === undefined || item.high === undefined ? undefined : [y.at(item.low), y.at(item.high)].map(rounded)
  const caps = (end: string): string =>
    Number(end) > plot.top && Number(end) < plot.bottom ? `M${rounded(place - 3)} ${end}h6` : ''
  const bar =
    ends === undefined
      ? ''
      : element('path', {
          d: `M${rounded(place)} ${ends[0]}V${ends[1]}${caps(ends[0])}${caps(ends[1])}`,
          stroke: colour,
          fill: 'none',
        })
  const title = item.words === undefined ? '' : element('title', {}, escaped(item.words))
  return element(
    'g',
    {},
    title,
    bar,
    toneSign({ x: place, y: y.at(item.y) }, { tone, hollow: hollow === true }, palette),
  )
}

/** The sign of a tone: disc, square, diamond, triangle, cross; the others are discs. */
export function toneSign(
  { x, y }: { readonly x: number; readonly y: number },
  { tone, hollow }: { readonly tone: Tone; readonly hollow: boolean },
  palette: Palette,
): Markup {
  const colour = toneColour(tone, palette)
  const look = { fill: hollow ? palette.paper : colour, stroke: colour, 'stroke-width': 1.4 }
  const at = (dx: number, dy: number): string => `${rounded(x + dx)} ${rounded(y + dy)}`
  switch (tone) {
    case 'blue':
      return element('rect', { x: x - 3.2, y: y - 3.2, width: 6.4, height: 6.4, ...look })
    case 'red':
      return element('path', { d: `M${at(0, -4.4)}L${at(4.4, 0)}L${at(0, 4.4)}L${at(-4.4, 0)}Z`, ...look })
    case 'orange':
      return element('path', { d: `M${at(0, -4.2)}L${at(4, 3.2)}L${at(-4, 3.2)}Z`, ...look })
    case 'purple':
      return element('path', {
        d: `M${at(-3.4, -3.4)}L${at(3.4, 3.4)}M${at(-3.4, 3.4)}L${at(3.4, -3.4)}`,
        ...look,
        fill: 'none',
        'stroke-width': 2,
      })
    default:
      return element('circle', { cx: x, cy: y, r: 3.4, ...look })
  }
}

const pathOf = (places: readonly (readonly number[])[]): string =>
  places
    .filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y))
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`)
    .join('')
