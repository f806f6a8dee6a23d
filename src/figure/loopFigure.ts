import { printQuantity } from '../core/quantity/index.ts'
import type { Loop } from '../core/terms/index.ts'
import type { ChartPanel } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the figure of a loop shows. */
export interface LoopFigureData extends Words {
  readonly loop: Loop
}

const milli = 1000

/** Friction up and down against speed; below it their difference with its own intervals and the margin that matters. */
export function loopFigure({ loop, ...words }: LoopFigureData, options: Partial<SheetOptions> = {}): Markup {
  return chartFigure(
    { ...words, panels: [bothPanel(loop), differencePanel(loop)], words: loop.sentence },
    { id: 'loop', ...options },
  )
}

const speedTitle = 'sliding speed (mm/s)'

function bothPanel({ pairs }: Loop): ChartPanel {
  const along = (pick: (pair: Loop['pairs'][number]) => number) =>
    pairs.map((pair) => ({ x: pair.slidingSpeed * milli, y: pick(pair) }))
  return {
    x: { title: speedTitle, log: true },
    y: { title: 'friction coefficient µ (1)', log: true },
    height: 220,
    marks: [
      { kind: 'line', tone: 'accent', items: along(({ frictionUp }) => frictionUp) },
      { kind: 'line', tone: 'orange', items: along(({ frictionDown }) => frictionDown), dashed: true },
      { kind: 'points', tone: 'accent', items: along(({ frictionUp }) => frictionUp), label: 'up' },
      { kind: 'points', tone: 'orange', items: along(({ frictionDown }) => frictionDown), label: 'down' },
    ],
  }
}

function differencePanel({ pairs, margin }: Loop): ChartPanel {
  const share = (value: number, { frictionUp, frictionDown }: Loop['pairs'][number]): number =>
    (200 * value) / (frictionUp + frictionDown)
  const items = pairs.map((pair) => {
    const { difference, slidingSpeed, p } = pair
    const value = share(difference.value, pair)
    return {
      x: slidingSpeed * milli,
      y: value,
      low: share(difference.low ?? difference.value, pair),
      high: share(difference.high ?? difference.value, pair),
      words: `${printQuantity(slidingSpeed, 'velocity', { digits: 3 })}: up less down ${Number(value.toPrecision(2))} %, p = ${Number(p.toPrecision(2))}`,
    }
  })
  const band = pairs.map((pair) => ({
    x: pair.slidingSpeed * milli,
    low: share(pair.together.low, pair),
    high: share(pair.together.high, pair),
  }))
  return {
    x: { title: speedTitle, log: true },
    y: { title: 'up less down (% of friction)', log: false },
    height: 190,
    marks: [
      { kind: 'band', tone: 'quiet', items: band, label: '95 % for all speeds at once' },
      { kind: 'level', at: 0, words: 'no difference' },
      { kind: 'level', at: 100 * margin, words: `margin ${Number((100 * margin).toPrecision(2))} %` },
      { kind: 'level', at: -100 * margin, words: '' },
      { kind: 'points', tone: 'ink', items, label: 'own 95 %' },
    ],
  }
}
