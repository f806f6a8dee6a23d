import type { Hold } from '../core/terms/index.ts'
import type { ChartMark, ChartPanel } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the figure of a hold shows. */
export interface HoldFigureData extends Words {
  readonly hold: Hold
}

/** Friction against the distance slid: blocks, the fitted law, the last third that decides on run-in, the end of a life. */
export function holdFigure({ hold, ...words }: HoldFigureData, options: Partial<SheetOptions> = {}): Markup {
  const { runIn, blocks, fitted, life } = hold
  const marks: ChartMark[] = [
    { kind: 'span', tone: 'quiet', from: runIn.from, to: runIn.to, label: 'last third, asked for run-in' },
    ...lifeMarks(life),
    {
      kind: 'points',
      tone: 'ink',
      hollow: true,
      items: blocks.map(({ distance, friction }) => ({ x: distance, y: friction })),
      label: 'friction in blocks',
    },
    {
      kind: 'line',
      tone: 'accent',
      items: fitted.map((y, i) => ({ x: blocks[i].distance, y })),
      label: 'fitted law',
    },
    ...steadyMarks(hold),
  ]
  const panel: ChartPanel = {
    x: { title: 'distance slid (m)', log: false },
    y: { title: 'friction coefficient µ (1)', log: false },
    height: 260,
    marks,
  }
  const told = [runIn.sentence, life?.sentence ?? ''].filter((sentence) => sentence !== '').join(' ')
  return chartFigure({ ...words, panels: [panel], words: told }, { id: 'hold', ...options })
}

function lifeMarks(life: Hold['life']): ChartMark[] {
  if (life === null) return []
  const threshold: ChartMark = { kind: 'level', at: life.threshold, words: `threshold ${life.threshold}` }
  const { distance, watched } = life
  if (distance === null) return [threshold]
  const [from, to] = [distance.low ?? 0, distance.high ?? watched]
  return [threshold, { kind: 'span', tone: 'red', from, to, label: 'life, 95 %' }]
}

function steadyMarks({ steadyFrom, from, to }: Hold): ChartMark[] {
  if (steadyFrom === null || steadyFrom.value <= from || steadyFrom.value >= to) return []
  const span = { from: Math.max(from, steadyFrom.low ?? from), to: Math.min(to, steadyFrom.high ?? to) }
  return [{ kind: 'span', tone: 'orange', ...span, label: 'steady from here, 95 %' }]
}
