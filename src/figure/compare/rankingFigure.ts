import { scaleLinear } from 'd3-scale'
import type { Ranking } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { shortNumber } from '../panel.ts'
import { footNote, heading, picture, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { fitted } from '../textWidth.ts'
import { linearTicks, tickLabel } from '../ticks.ts'

/** Samples in the order of their friction. */
export interface RankingFigureData extends Words {
  readonly ranking: Ranking
}

const defaults: SheetOptions = { palette: 'light', width: 880, id: 'ranking' }

const lane = 32
const left = 180
const right = 90

/** A lane for each sample from the most slippery on: friction with its own interval, and the letters of what cannot be told apart. */
export function rankingFigure(data: RankingFigureData, options: Partial<SheetOptions> = {}): Markup {
  const sheet = sheetOf({ ...defaults, ...options })
  const { palette, width } = sheet
  const { samples, by, sentence, method } = data.ranking
  const head = heading(data, sheet)
  const top = head.height + 12
  const bottom = top + lane * samples.length
  const ends = samples.flatMap(({ low, high }) => [low, high])
  const [least, most] = [Math.min(...ends), Math.max(...ends)]
  const air = 0.06 * (most - least) || 0.05 * most || 1
  const x = scaleLinear()
    .domain([least - air, most + air])
    .range([left, width - right])
  const ticks = linearTicks(least - air, most + air, 70 / (width - left - right))
  const rules = ticks.map((tick) => `M${rounded(x(tick))} ${top}V${bottom}`).join('')
  const rows = samples.map(({ sample, friction, low, high, letters, used }, i) => {
    const y = top + lane * (i + 0.5)
    return element(
      'g',
      {},
      lettering(fitted(`${sample} (${used})`, sizes.text, left - 32), {
        x: left - 14,
        y: y + 4,
        fill: palette.ink,
        anchor: 'end',
      }),
      element('path', {
        d: `M${rounded(x(low))} ${y}H${rounded(x(high))}M${rounded(x(low))} ${y - 5}v10M${rounded(x(high))} ${y - 5}v10`,
        stroke: palette.ink,
        'stroke-width': 1.4,
        fill: 'none',
      }),
      element('circle', { cx: x(friction), cy: y, r: 4.5, fill: palette.accent }),
      lettering(letters, { x: width - right + 16, y: y + 5, fill: palette.ink, size: 15, weight: 600 }),
    )
  })
  const labels = ticks.map((tick) =>
    lettering(tickLabel(tick), {
      x: x(tick),
      y: bottom + 18,
      fill: palette.quiet,
      size: sizes.small,
      anchor: 'middle',
    }),
  )
  const title = lettering(fitted(`${by} (1)`, sizes.text, width - 40), {
    x: (left + width - right) / 2,
    y: bottom + 38,
    fill: palette.ink,
    anchor: 'middle',
  })
  const note = `Bars: 95 % interval of each mean. ${sentence} ${method} ${data.note ?? ''}`.trim()
  const foot = footNote({ title: '', note }, { left: 16, top: bottom + 48 }, sheet)
  return picture({
    sheet,
    title: data.title,
    words: `${sentence} ${samples.map(({ sample, friction, low, high }) => `${sample} ${shortNumber(friction)} (${shortNumber(low)} to ${shortNumber(high)})`).join(', ')}.`,
    height: bottom + 48 + foot.height + 14,
    body: [
      head.markup,
      element('path', { d: rules, stroke: palette.hairline, fill: 'none' }),
      element('path', { d: `M${left} ${top}V${bottom}H${width - right}`, stroke: palette.ink, fill: 'none' }),
      ...rows,
      ...labels,
      title,
      foot.markup,
    ],
  })
}
