import { printQuantity } from '../core/quantity/index.ts'
import type { Interval, MetrePerSecond } from '../core/terms/index.ts'
import type { ChartMark, ChartPanel, ChartPoint } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** One step as the stick–slip figure shows it. */
export interface StickSlipStep {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  readonly sticks: boolean
  /** Few words for what else it is. */
  readonly words: string
  /** Middle 95 % of the rows over friction. */
  readonly swing: number
  /** Hz; null where there are no cycles. */
  readonly frequency: Interval | null
}

/** What the stick–slip figure shows. */
export interface StickSlipFigureData extends Words {
  readonly steps: readonly StickSlipStep[]
  /** Hz */
  readonly naturalFrequency: number | null
  /** Between which speeds stick–slip ends. */
  readonly bracket: { readonly from: MetrePerSecond; readonly to: MetrePerSecond } | null
  readonly sentence: string
}

const millimetres = 1000

/** Swing of friction above, frequency of the cycles below, both against sliding speed, with the bracket of the critical speed. */
export function stickSlipFigure(data: StickSlipFigureData, options: Partial<SheetOptions> = {}): Markup {
  const cycles = data.steps.some(({ frequency }) => frequency !== null)
  const panels = cycles ? [swingPanel(data), frequencyPanel(data)] : [swingPanel(data)]
  return chartFigure({ ...data, panels, words: data.sentence }, { id: 'stick-slip', ...options })
}

function swingPanel({ steps, bracket }: StickSlipFigureData): ChartPanel {
  const points = (wanted: boolean): readonly ChartPoint[] =>
    steps
      .filter(({ sticks }) => sticks === wanted)
      .map(({ step, slidingSpeed, swing, words }) => ({
        x: slidingSpeed * millimetres,
        y: 100 * swing,
        words: `step ${step}, ${printQuantity(slidingSpeed, 'velocity')}: swing ${printQuantity(swing, 'ratio', { digits: 3 })}, ${words}`,
      }))
  const [sticking, others] = [points(true), points(false)]
  return {
    x: speedAxis(steps),
    y: { title: 'swing of friction (%)', log: false },
    height: 190,
    marks: [
      ...bracketMarks(bracket, 'stick–slip ends in here'),
      { kind: 'points', tone: 'red', items: sticking, label: sticking.length > 0 ? 'sticks and slips' : undefined },
      {
        kind: 'points',
        tone: 'ink',
        hollow: true,
        items: others,
        label: others.length > 0 ? 'does not' : undefined,
      },
    ],
  }
}

function frequencyPanel({ steps, bracket, naturalFrequency }: StickSlipFigureData): ChartPanel {
  const points = (wanted: boolean): readonly ChartPoint[] =>
    steps.flatMap(({ step, sticks, slidingSpeed, frequency, words }) =>
      frequency === null || sticks !== wanted
        ? []
        : [
            {
              x: slidingSpeed * millimetres,
              y: frequency.value,
              low: frequency.low,
              high: frequency.high,
              words: `step ${step}: ${hertz(frequency.value)}, ${words}`,
            },
          ],
    )
  const natural: readonly ChartMark[] =
    naturalFrequency === null
      ? []
      : [{ kind: 'level', at: naturalFrequency, words: `√(k/I)/2π = ${hertz(naturalFrequency)}` }]
  return {
    x: speedAxis(steps),
    y: { title: 'frequency (Hz)', log: true },
    height: 170,
    marks: [
      ...bracketMarks(bracket),
      ...natural,
      { kind: 'points', tone: 'red', items: points(true) },
      { kind: 'points', tone: 'ink', hollow: true, items: points(false) },
    ],
  }
}

const hertz = (value: number): string => printQuantity(value, 'frequency', { digits: 3 })

const bracketMarks = (bracket: StickSlipFigureData['bracket'], label?: string): readonly ChartMark[] =>
  bracket === null
    ? []
    : [{ kind: 'span', tone: 'orange', from: bracket.from * millimetres, to: bracket.to * millimetres, label }]

const speedAxis = (steps: readonly StickSlipStep[]): ChartPanel['x'] => ({
  title: 'sliding speed (mm/s)',
  log: true,
  range: speedRange(steps),
})

function speedRange(steps: readonly StickSlipStep[]): readonly [number, number] {
  const speeds = steps.map(({ slidingSpeed }) => slidingSpeed * millimetres).filter((speed) => speed > 0)
  if (speeds.length === 0) return [1, 10]
  return [Math.min(...speeds) / 1.25, Math.max(...speeds) * 1.25]
}
