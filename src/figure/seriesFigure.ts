import { printQuantity } from '../core/quantity/index.ts'
import type { Series, SeriesMember } from '../core/terms/index.ts'
import type { ChartMark, ChartPanel } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the figures of a series show; `places` are the points of each member on the axis that was chosen, null where it has none. */
export interface SeriesFigureData extends Words {
  readonly series: Series
  /** Title of the axis with its unit, and the places of each member's points in that unit. */
  readonly across: { readonly title: string; readonly places: readonly (readonly (number | null)[])[] }
}

const tones = ['accent', 'blue', 'red', 'orange', 'purple', 'ink'] as const

/** All members in one panel; below it the law at every speed with its interval. */
export function seriesFigure(
  { series, across, ...words }: SeriesFigureData,
  options: Partial<SheetOptions> = {},
): Markup {
  const together: ChartPanel = {
    x: { title: across.title, log: true },
    y: { title: 'friction coefficient µ (1)', log: true },
    height: 240,
    marks: series.members.flatMap((member, i) =>
      memberMarks(member, across.places[i], { series, tone: tones[i % tones.length] }),
    ),
  }
  const laws = lawPanel(series)
  const panels = laws === undefined ? [together] : [together, laws]
  return chartFigure({ ...words, panels, words: series.sentences.join(' ') }, { id: 'series', ...options })
}

/** Small multiples: every member in a plot of its own, the others behind it in grey, all on the same axes. */
export function seriesMultiplesFigure(
  { series, across, ...words }: SeriesFigureData,
  options: Partial<SheetOptions> = {},
): Markup {
  const places = across.places.flat().filter((place): place is number => place !== null && place > 0)
  const friction = series.members.flatMap(({ points }) => points.map((point) => point.friction))
  const range = (values: readonly number[], air: number): [number, number] =>
    values.length === 0 ? [1, 10] : [Math.min(...values) / air, Math.max(...values) * air]
  const axes = {
    x: { title: across.title, log: true, range: range(places, 1.2) },
    y: { title: 'µ (1)', log: true, range: range(friction, 1.1) },
    height: 96,
  }
  const panels = series.members.map((member, i): ChartPanel => {
    const others = series.members.flatMap((other, k): ChartMark[] =>
      k === i ? [] : [{ kind: 'line', tone: 'quiet', items: placed(other, across.places[k]) }],
    )
    return { ...axes, marks: [...others, ...memberMarks(member, across.places[i], { series, tone: 'accent' })] }
  })
  return chartFigure({ ...words, panels, words: series.sentences.join(' ') }, { id: 'multiples', ...options })
}

function placed({ points }: SeriesMember, places: readonly (number | null)[]): { x: number; y: number }[] {
  return points
    .flatMap(({ friction }, i) => {
      const x = places[i]
      return x === null || x === undefined ? [] : [{ x, y: friction }]
    })
    .sort((a, b) => a.x - b.x)
}

function memberMarks(
  member: SeriesMember,
  places: readonly (number | null)[],
  { series, tone }: { readonly series: Series; readonly tone: (typeof tones)[number] },
): ChartMark[] {
  const items = placed(member, places)
  return [
    { kind: 'line', tone, items },
    { kind: 'points', tone, items, label: memberWords(member, series.axis) },
  ]
}

/** What a member is called: its load or its temperature. */
const memberWords = ({ axialForce, temperature, name }: SeriesMember, axis: Series['axis']): string =>
  axis === 'load'
    ? printQuantity(axialForce, 'force', { digits: 3 })
    : temperature === null
      ? name
      : printQuantity(temperature, 'temperature', { digits: 3 })

function lawPanel({ axis, atSpeeds, overall }: Series): ChartPanel | undefined {
  const laws = atSpeeds.filter(({ low, high }) => low !== null && high !== null)
  if (laws.length === 0) return undefined
  const scale = axis === 'load' ? 1 : 1e-3
  const items = laws.map(({ slidingSpeed, value, low, high }) => ({
    x: (slidingSpeed ?? 0) * 1000,
    y: value * scale,
    low: (low ?? value) * scale,
    high: (high ?? value) * scale,
    words: `${printQuantity(slidingSpeed ?? 0, 'velocity', { digits: 3 })}: ${Number((value * scale).toPrecision(3))}`,
  }))
  const named: ChartMark[] =
    axis === 'load'
      ? [
          { kind: 'level', at: 0, words: 'a = 0' },
          { kind: 'level', at: 1 / 3, words: 'a = 1/3' },
        ]
      : [{ kind: 'level', at: 0, words: 'no effect' }]
  const all: ChartMark[] =
    overall?.low == null || overall.high == null
      ? []
      : [
          {
            kind: 'band',
            tone: 'accent',
            items: [items[0], items[items.length - 1]].map(({ x }) => ({
              x,
              low: (overall.low ?? 0) * scale,
              high: (overall.high ?? 0) * scale,
            })),
            label: 'all speeds, 95 %',
          },
        ]
  return {
    x: { title: 'sliding speed (mm/s)', log: true },
    y: { title: axis === 'load' ? 'exponent a of µ ∝ F^(−a)' : 'E of exp(E/RT) (kJ/mol)', log: false },
    height: 170,
    marks: [...all, ...named, { kind: 'points', tone: 'ink', items, label: 'one speed, 95 %' }],
  }
}
