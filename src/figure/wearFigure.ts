import { printQuantity } from '../core/quantity/index.ts'
import type { Interval, Metre, Pascal } from '../core/terms/index.ts'
import type { ChartMark, ChartPanel } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** The contact when a step was half done. */
export interface WearFigureStep {
  readonly step: number
  readonly distance: Metre
  readonly scar: Interval
  readonly pressure: Interval
  readonly ifAtOnce: Pascal
  readonly ifFresh: Pascal
}

/** What the wear figure shows; either part may be empty. */
export interface WearFigureData extends Words {
  readonly steps: readonly WearFigureStep[]
  /** Distance after which the flat is as wide as the elastic contact. */
  readonly elasticFor: Metre | null
  /** Depth by the gap along the way. */
  readonly gap: readonly { readonly distance: Metre; readonly depth: Metre }[]
  readonly sentence: string
}

/** Mean pressure over the distance between its bounds, and the depth that the gap tells. */
export function wearFigure(data: WearFigureData, options: Partial<SheetOptions> = {}): Markup {
  const panels: ChartPanel[] = []
  if (data.steps.length > 0) panels.push(pressurePanel(data))
  if (data.gap.length > 1) panels.push(gapPanel(data))
  const nothing: ChartPanel = {
    x: { title: 'sliding distance (m)', log: false },
    y: { title: 'depth (µm)', log: false },
    marks: [],
    height: 80,
  }
  const shown = panels.length === 0 ? [nothing] : panels
  return chartFigure({ ...data, panels: shown, words: data.sentence }, { id: 'wear', ...options })
}

const distanceAxis = { title: 'sliding distance (m)', log: false } as const

function pressurePanel({ steps, elasticFor }: WearFigureData): ChartPanel {
  const last = steps[steps.length - 1]
  const bounds: ChartMark = {
    kind: 'band',
    tone: 'quiet',
    items: steps.map(({ distance, ifAtOnce, ifFresh }) => ({ x: distance, low: ifAtOnce / 1e6, high: ifFresh / 1e6 })),
    label: 'between all wear at once and none',
  }
  const elastic: readonly ChartMark[] =
    elasticFor !== null && elasticFor > 0 && elasticFor < (last?.distance ?? 0)
      ? [{ kind: 'span', tone: 'blue', from: 0, to: elasticFor, label: 'flat within the elastic contact' }]
      : []
  return {
    x: distanceAxis,
    y: { title: 'mean pressure (MPa)', log: true },
    height: 230,
    marks: [
      bounds,
      ...elastic,
      {
        kind: 'line',
        tone: 'accent',
        items: steps.map(({ distance, pressure }) => ({ x: distance, y: pressure.value / 1e6 })),
      },
      {
        kind: 'points',
        tone: 'accent',
        items: steps.map(({ step, distance, pressure, scar }) => ({
          x: distance,
          y: pressure.value / 1e6,
          low: pressure.low / 1e6,
          high: pressure.high / 1e6,
          words: `step ${step}, ${printQuantity(distance, 'length', { digits: 3 })}: ${printQuantity(pressure.value, 'pressure', { digits: 3 })}, flat ${printQuantity(scar.value, 'length', { digits: 3 })}`,
        })),
        label: 'step, if wear goes with load and distance (95 %)',
      },
    ],
  }
}

const gapPanel = ({ gap }: WearFigureData): ChartPanel => ({
  x: distanceAxis,
  y: { title: 'depth by the gap (µm)', log: false },
  height: 170,
  marks: [
    {
      kind: 'points',
      tone: 'ink',
      hollow: true,
      items: gap.map(({ distance, depth }) => ({ x: distance, y: depth * 1e6 })),
      label: 'mean of a stretch, thermal growth taken off as far as the temperature was seen',
    },
  ],
})
