import type { Point } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Palette } from '../palette.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import { linearTicks, tickLabel } from '../ticks.ts'
import { type BudgetRow, budgetRows, nothingInWords } from './budgetRows.ts'

/** What the budget shows: the points of one record with their own and shared uncertainties. */
export interface BudgetFigureData extends Words {
  readonly points: readonly Point[]
}

export type BudgetFigureOptions = SheetOptions

const defaults: BudgetFigureOptions = { palette: 'light', width: 880, id: 'budget' }

const rowHeight = 26
const axisHeight = 44

/** How far a range may stretch the axis beyond the longest bar. */
const stretch = 3

/**
 * Which input makes the uncertainty: the own part of a step and each shared source as a share of friction, the median over
 * the points as a bar and the range over the points as a hairline. What makes nothing is named below.
 */
export function budgetFigure(data: BudgetFigureData, options: Partial<BudgetFigureOptions> = {}): Markup {
  const sheet = sheetOf({ ...defaults, ...options })
  const head = heading(data, sheet)
  const budget = budgetRows(data.points)
  const { rows } = budget
  const top = head.height + 6
  const names = Math.max(40, ...rows.map(({ words }) => 1.08 * textWidth(words, sizes.text)))
  const values = Math.max(40, ...rows.map((row) => textWidth(valueInWords(row), sizes.small)))
  const plot: Box = {
    left: 16 + names + 10,
    right: sheet.width - 16 - values - 10,
    top,
    bottom: top + Math.max(1, rows.length) * rowHeight + gapsBefore(rows, rows.length),
  }
  const scale = scaleOf(rows, plot)
  const empty = rows.length === 0 ? emptyWords(plot, sheet) : ''
  const said = [...nothingInWords(budget), data.note ?? ''].filter((sentence) => sentence !== '').join(' ')
  const foot = footNote({ title: '', note: said }, { left: 16, top: plot.bottom + axisHeight }, sheet)
  const body = [
    head.markup,
    rows.length === 0 ? '' : axis(plot, scale, sheet),
    ...rows.map((row, index) =>
      bar(row, { plot, scale, y: plot.top + index * rowHeight + gapsBefore(rows, index) }, sheet),
    ),
    empty,
    foot.markup,
  ]
  const height = plot.bottom + axisHeight + foot.height + 12
  return picture({ sheet, title: data.title, words: inWords(data, budget), height, body })
}

/** A gap between own and shared, so that nobody adds what shrinks to what does not. */
const gapsBefore = (rows: readonly BudgetRow[], index: number): number => {
  const first = rows.findIndex(({ part }) => part !== 'own')
  return first > 0 && index >= first ? 10 : 0
}

interface Scale {
  readonly most: number
  /** Pixels of a share of friction, held to the plot. */
  readonly x: (share: number) => number
}

function scaleOf(rows: readonly BudgetRow[], { left, right }: Box): Scale {
  const longest = Math.max(1e-9, ...rows.map(({ median }) => median))
  const most = 1.05 * Math.max(longest, ...rows.map(({ high }) => Math.min(high, stretch * longest)))
  return { most, x: (share) => left + Math.min(1, share / most) * (right - left) }
}

function axis(plot: Box, { most, x }: Scale, { palette }: Sheet): Markup {
  const ticks = linearTicks(0, 100 * most, 48 / (plot.right - plot.left))
  const rules = ticks.map((tick) => `M${rounded(x(tick / 100))} ${plot.top}V${plot.bottom}`).join('')
  const labels = ticks.map((tick) =>
    lettering(tickLabel(tick), {
      x: x(tick / 100),
      y: plot.bottom + 17,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'middle',
    }),
  )
  const title = lettering('standard uncertainty as a share of friction (%)', {
    x: (plot.left + plot.right) / 2,
    y: plot.bottom + 35,
    fill: palette.ink,
    anchor: 'middle',
  })
  return element(
    'g',
    {},
    element('path', { d: rules, stroke: palette.hairline, fill: 'none' }),
    element('path', { d: `M${rounded(plot.left)} ${plot.top}V${plot.bottom}`, stroke: palette.ink, fill: 'none' }),
    ...labels,
    title,
  )
}

/** Own in the accent, shared in its own colour, the sum of the shared ones hollow. */
function bar(row: BudgetRow, at: { plot: Box; scale: Scale; y: number }, { palette }: Sheet): Markup {
  const { plot, scale, y } = at
  const middle = y + rowHeight / 2
  const end = scale.x(row.median)
  const colour = row.part === 'own' ? palette.accent : palette.shared
  const box = { x: plot.left, y: middle - 6, width: Math.max(0.8, end - plot.left), height: 12 }
  const drawn =
    row.part === 'together'
      ? element('rect', { ...box, fill: colour, 'fill-opacity': 0.16, stroke: colour, 'stroke-width': 1.4 })
      : element('rect', { ...box, fill: colour })
  return element(
    'g',
    {},
    lettering(row.words, {
      x: plot.left - 10,
      y: middle + 4,
      fill: palette.ink,
      anchor: 'end',
      weight: row.part === 'source' ? undefined : 600,
    }),
    drawn,
    range(row, { scale, middle, plot }, palette),
    lettering(valueInWords(row), { x: plot.right + 10, y: middle + 4, fill: palette.ink, size: sizes.small }),
  )
}

/** From least to most over the points, with a cap at each end, or an arrow where it leaves the plot. */
function range(row: BudgetRow, at: { scale: Scale; middle: number; plot: Box }, palette: Palette): Markup {
  const { scale, middle, plot } = at
  const low = scale.x(row.low)
  const high = scale.x(row.high)
  if (high - low < 1.5) return ''
  const beyond = row.high > scale.most
  const tip = beyond ? `M${rounded(plot.right - 6)} ${middle - 4}l6 4l-6 4` : `M${rounded(high)} ${middle - 4}v8`
  const d = `M${rounded(low)} ${middle}H${rounded(high)}M${rounded(low)} ${middle - 4}v8${tip}`
  // A halo keeps the line in sight on its own bar.
  const line = { d, fill: 'none', 'stroke-linecap': 'square' }
  return (
    element('path', { ...line, stroke: palette.paper, 'stroke-width': 3.2, 'stroke-opacity': 0.85 }) +
    element('path', { ...line, stroke: palette.ink, 'stroke-width': 1.1 })
  )
}

function valueInWords({ median, low, high }: BudgetRow): string {
  const middle = `${percent(median)} %`
  return percent(low) === percent(high) ? middle : `${middle}  (${percent(low)} to ${percent(high)} %)`
}

/** Two digits are all that an uncertainty bears (JCGM 100:2008, 7.2.6). */
const percent = (share: number): string =>
  share > 0 && share < 1e-5 ? 'under 0.001' : tickLabel(Number((100 * share).toPrecision(2)))

const emptyWords = (plot: Box, { palette }: Sheet): Markup =>
  lettering('no step gave a friction value', {
    x: (plot.left + plot.right) / 2,
    y: plot.bottom - 8,
    fill: palette.ink,
    anchor: 'middle',
  })

function inWords({ points }: BudgetFigureData, budget: ReturnType<typeof budgetRows>): string {
  if (budget.rows.length === 0) return 'No step gave a friction value, so there is no budget.'
  return [
    `Standard uncertainty of friction as a share of friction, median over ${budget.points} of ${points.length} steps and range.`,
    ...budget.rows.map((row) => `${row.words}: ${valueInWords(row).replace('  ', ' ')}.`),
    ...nothingInWords(budget),
  ].join(' ')
}
