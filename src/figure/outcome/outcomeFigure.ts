import { scaleLinear } from 'd3-scale'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { shortNumber } from '../panel.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { linearTicks, tickLabel } from '../ticks.ts'

/** An interval with a name; `hollow` ones are drawn as outlines. */
export interface NamedInterval {
  readonly words: string
  readonly low: number
  readonly high: number
  readonly by: 'linear' | 'monteCarlo'
}

/** What one input makes of the variance, 0 to 1. */
export interface NamedShare {
  readonly words: string
  readonly share: number
}

/** A derived quantity as two methods see it. */
export interface OutcomeFigureData extends Words {
  /** What it is, with its unit. */
  readonly quantity: string
  /** Counts over equal steps from `low` to `high`. */
  readonly histogram: { readonly low: number; readonly high: number; readonly counts: readonly number[] }
  /** Density of the law of propagation at as many places over the same range, from end to end; per unit of the quantity. */
  readonly density: readonly number[]
  /** Trials behind the histogram, those outside its range too. */
  readonly trials: number
  readonly intervals: readonly NamedInterval[]
  readonly estimate: number
  readonly shares: readonly NamedShare[]
  readonly sentence: string
}

export type OutcomeFigureOptions = SheetOptions

const defaults: OutcomeFigureOptions = { palette: 'light', width: 880, id: 'outcome' }

const plotHeight = 220
const lane = 30

/** Monte Carlo as a histogram, the law of propagation as a line over it, both intervals below, and what each input makes. */
export function outcomeFigure(data: OutcomeFigureData, options: Partial<OutcomeFigureOptions> = {}): Markup {
  const sheet = sheetOf({ ...defaults, ...options })
  const head = heading(data, sheet)
  const plot: Box = { left: 30, right: sheet.width - 30, top: head.height + 10, bottom: head.height + 10 + plotHeight }
  const { low, high } = data.histogram
  const x = scaleLinear().domain([low, high]).range([plot.left, plot.right]).clamp(true)
  const lanes = plot.bottom + 72
  const shares = lanes + lane * data.intervals.length + 14
  const bars = shareBars(data.shares, { top: shares, sheet })
  const foot = footNote(
    { title: '', note: [data.sentence, data.note ?? ''].join(' ').trim() },
    { left: 16, top: shares + bars.height },
    sheet,
  )
  const body = [
    head.markup,
    distribution(data, plot, { x, sheet }),
    axis(data, plot, { x, sheet }),
    ...data.intervals.map((interval, i) => intervalLane(interval, { y: lanes + lane * i, x, sheet })),
    bars.markup,
    foot.markup,
  ]
  return picture({
    sheet,
    title: data.title,
    words: inWords(data),
    height: shares + bars.height + foot.height + 12,
    body,
  })
}

interface Scaled {
  readonly x: (value: number) => number
  readonly sheet: Sheet
}

function distribution(data: OutcomeFigureData, plot: Box, { x, sheet: { palette } }: Scaled): Markup {
  const { low, high, counts } = data.histogram
  const step = (high - low) / counts.length
  const densities = counts.map((count) => count / data.trials / step)
  const most = Math.max(...densities, ...data.density.filter(Number.isFinite), 1e-300)
  const y = (density: number): number => plot.bottom - (density / (1.06 * most)) * (plot.bottom - plot.top)
  const steps = densities.map(
    (density, i) =>
      `L${rounded(x(low + i * step))} ${rounded(y(density))}L${rounded(x(low + (i + 1) * step))} ${rounded(y(density))}`,
  )
  const curve = data.density.map((density, i) => {
    const at = low + ((high - low) * i) / (data.density.length - 1)
    return `${i === 0 ? 'M' : 'L'}${rounded(x(at))} ${rounded(y(density))}`
  })
  return (
    element('path', {
      d: `M${plot.left} ${plot.bottom}${steps.join('')}L${plot.right} ${plot.bottom}Z`,
      fill: palette.accent,
      'fill-opacity': palette.bandOpacity + 0.12,
      stroke: palette.accent,
      'stroke-width': 0.8,
    }) +
    element('path', {
      d: curve.join(''),
      stroke: palette.ink,
      'stroke-width': 1.6,
      'stroke-dasharray': '7 4',
      fill: 'none',
    })
  )
}

function axis(data: OutcomeFigureData, plot: Box, { x, sheet: { palette } }: Scaled): Markup {
  const { low, high } = data.histogram
  const ticks = linearTicks(low, high, 76 / (plot.right - plot.left))
  const marks = ticks.map((tick) => `M${rounded(x(tick))} ${plot.bottom}v5`).join('')
  const at = x(data.estimate)
  return element(
    'g',
    {},
    element('path', { d: `M${plot.left} ${plot.bottom}H${plot.right}${marks}`, stroke: palette.ink, fill: 'none' }),
    element('path', {
      d: `M${rounded(at)} ${plot.top}V${plot.bottom}`,
      stroke: palette.quiet,
      'stroke-dasharray': '2 3',
      fill: 'none',
    }),
    ...ticks.map((tick) =>
      lettering(tickLabel(tick), {
        x: x(tick),
        y: plot.bottom + 19,
        fill: palette.quiet,
        size: sizes.small,
        anchor: 'middle',
      }),
    ),
    lettering(data.quantity, {
      x: (plot.left + plot.right) / 2,
      y: plot.bottom + 38,
      fill: palette.ink,
      anchor: 'middle',
    }),
  )
}

function intervalLane({ words, low, high, by }: NamedInterval, at: Scaled & { readonly y: number }): Markup {
  const { y, x, sheet } = at
  const { palette } = sheet
  const [from, to] = [x(low), x(high)]
  const colour = by === 'linear' ? palette.ink : palette.accent
  const line = element('path', {
    d: `M${rounded(from)} ${y}H${rounded(to)}M${rounded(from)} ${y - 5}v10M${rounded(to)} ${y - 5}v10`,
    stroke: colour,
    'stroke-width': 1.8,
    'stroke-dasharray': by === 'linear' ? '7 4' : undefined,
    fill: 'none',
  })
  // Words lie over the line on a ground of paper, in the middle of the sheet, whatever the length of the line.
  const said = `${words}: ${shortNumber(low, 5)} to ${shortNumber(high, 5)}`
  return (
    line + lettering(said, { x: sheet.width / 2, y: y - 6, fill: palette.ink, size: sizes.small, anchor: 'middle' })
  )
}

function shareBars(shares: readonly NamedShare[], { top, sheet }: { readonly top: number; readonly sheet: Sheet }) {
  const { palette, width } = sheet
  const shown = shares.filter(({ share }) => share >= 0.0005)
  if (shown.length === 0) return { markup: '', height: 0 }
  const left = 220
  const title = lettering('Share of the variance', { x: 16, y: top + 14, fill: palette.ink, weight: 600 })
  const rows = shown.map(({ words, share }, i) => {
    const y = top + 26 + 20 * i
    return (
      lettering(words, { x: left - 10, y: y + 10, fill: palette.ink, size: sizes.small, anchor: 'end' }) +
      element('rect', {
        x: left,
        y,
        width: Math.max(0.8, share * (width - left - 100)),
        height: 12,
        fill: palette.shared,
      }) +
      lettering(`${shortNumber(100 * share, 2)} %`, {
        x: left + Math.max(0.8, share * (width - left - 100)) + 8,
        y: y + 10,
        fill: palette.quiet,
        size: sizes.small,
      })
    )
  })
  return { markup: title + rows.join(''), height: 26 + 20 * rows.length + 8 }
}

function inWords({ quantity, estimate, intervals, shares, sentence }: OutcomeFigureData): string {
  return [
    `Distribution of ${quantity}; estimate ${shortNumber(estimate, 5)}.`,
    ...intervals.map(({ words, low, high }) => `${words}: ${shortNumber(low, 5)} to ${shortNumber(high, 5)}.`),
    ...shares
      .filter(({ share }) => share >= 0.0005)
      .map(({ words, share }) => `${words} makes ${shortNumber(100 * share, 2)} % of the variance.`),
    sentence,
  ].join(' ')
}
