import type { Ratio } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { linearTicks } from '../ticks.ts'

/** What more replicates buy: the smallest difference that each number of them sees. */
export interface ReplicatesData extends Words {
  /** Rising numbers of replicates, each with the smallest difference seen, a share of friction. */
  readonly seen: readonly { readonly replicates: number; readonly difference: Ratio }[]
  /** The difference that matters. */
  readonly wanted: Ratio
  /** Replicates that see it; null where none on the axis does. */
  readonly enough: number | null
}

export interface ReplicatesOptions extends SheetOptions {
  readonly plotHeight: number
}

const replicatesDefaults: ReplicatesOptions = { palette: 'light', width: 880, plotHeight: 200, id: 'replicates' }

/** Bars of the smallest difference seen, and a line at the one that matters. Equal data and options give equal bytes. */
export function replicatesFigure(data: ReplicatesData, options: Partial<ReplicatesOptions> = {}): Markup {
  const chosen = { ...replicatesDefaults, ...options }
  if (!(chosen.plotHeight >= 100 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 100 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const top = head.height + 8
  const plot: Box = { left: 74, right: chosen.width - 24, top, bottom: top + chosen.plotHeight }
  const most = Math.max(data.wanted, ...data.seen.map(({ difference }) => Math.min(difference, 6 * data.wanted))) * 1.08
  const y = (share: Ratio): number => plot.bottom - (Math.min(share, most) / most) * (plot.bottom - plot.top)
  const foot = footNote(data, { left: plot.left, top: plot.bottom + 42 }, sheet)
  return picture({
    sheet,
    title: data.title,
    words: wordsOf(data),
    height: plot.bottom + 42 + foot.height + 10,
    body: [head.markup, shareAxis(most, y, { plot, sheet }), bars(data, y, { plot, sheet }), foot.markup],
  })
}

interface Around {
  readonly plot: Box
  readonly sheet: Sheet
}

const percent = (share: Ratio): string => `${Number((100 * share).toPrecision(2))} %`

function shareAxis(most: Ratio, y: (share: Ratio) => number, { plot, sheet: { palette } }: Around): Markup {
  const ticks = linearTicks(0, 100 * most, 34 / (plot.bottom - plot.top))
  const rules = ticks.map((tick) => `M${plot.left} ${rounded(y(tick / 100))}H${plot.right}`).join('')
  return element(
    'g',
    {},
    element('path', { d: rules, stroke: palette.hairline, fill: 'none' }),
    ...ticks.map((tick) =>
      lettering(String(Number(tick.toPrecision(6))), {
        x: plot.left - 9,
        y: y(tick / 100) + 4,
        fill: palette.quiet,
        size: sizes.small,
        anchor: 'end',
      }),
    ),
    lettering('smallest difference seen (%)', {
      x: 17,
      y: (plot.top + plot.bottom) / 2,
      fill: palette.ink,
      anchor: 'middle',
      turn: -90,
    }),
    lettering('replicates of each sample', {
      x: (plot.left + plot.right) / 2,
      y: plot.bottom + 38,
      fill: palette.ink,
      anchor: 'middle',
    }),
  )
}

function bars(data: ReplicatesData, y: (share: Ratio) => number, { plot, sheet }: Around): Markup {
  const { palette } = sheet
  const lane = (plot.right - plot.left) / Math.max(1, data.seen.length)
  const pieces = data.seen.flatMap(({ replicates, difference }, index) => {
    const middle = plot.left + (index + 0.5) * lane
    const wide = Math.min(34, lane * 0.6)
    const enough = data.enough !== null && replicates >= data.enough
    const bar = {
      x: middle - wide / 2,
      y: y(difference),
      width: wide,
      height: plot.bottom - y(difference),
      stroke: enough ? palette.accent : palette.quiet,
      fill: enough ? palette.accent : 'none',
      'fill-opacity': enough ? 0.25 : undefined,
    }
    return [
      element('rect', bar),
      lettering(String(replicates), {
        x: middle,
        y: plot.bottom + 18,
        fill: replicates === data.enough ? palette.accent : palette.quiet,
        size: sizes.small,
        anchor: 'middle',
        weight: replicates === data.enough ? 600 : undefined,
      }),
    ]
  })
  const at = y(data.wanted)
  return element(
    'g',
    {},
    ...pieces,
    element('path', { d: `M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`, stroke: palette.ink, fill: 'none' }),
    element('path', {
      d: `M${plot.left} ${rounded(at)}H${plot.right}`,
      stroke: palette.accent,
      'stroke-width': 1.6,
      fill: 'none',
    }),
    lettering(`matters from ${percent(data.wanted)}`, {
      x: plot.right - 4,
      y: at - 6,
      fill: palette.accent,
      size: sizes.small,
      anchor: 'end',
    }),
  )
}

function wordsOf({ seen, wanted, enough }: ReplicatesData): string {
  const told = seen.map(({ replicates, difference }) => `${replicates} see ${percent(difference)}`).join(', ')
  const answer =
    enough === null
      ? `none of these numbers sees ${percent(wanted)}.`
      : `${enough} are needed for the difference of ${percent(wanted)} that matters.`
  return `The smallest difference by the number of replicates: ${told}; ${answer}`
}
