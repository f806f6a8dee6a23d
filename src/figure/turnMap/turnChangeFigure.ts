import type { Radian } from '../../core/terms/index.ts'
import type { ChartMark, ChartPanel } from '../chart/chartData.ts'
import { chartFigure } from '../chart/chartFigure.ts'
import type { Markup } from '../markup.ts'
import type { SheetOptions, Words } from '../sheet.ts'

/** What changed around the turn; values in the unit that `unit` names, already converted. */
export interface TurnChangeFigureData extends Words {
  readonly angles: readonly Radian[]
  readonly early: ArrayLike<number>
  readonly late: ArrayLike<number>
  readonly local: ArrayLike<number>
  readonly low: ArrayLike<number>
  readonly high: ArrayLike<number>
  /** What is shown, with its unit: `friction coefficient µ (1)`. */
  readonly quantity: string
  /** The place that stands out; its change along the turns, and where it begins. */
  readonly spot: {
    readonly from: Radian
    readonly to: Radian
    readonly course: readonly { readonly turn: number; readonly change: number }[]
    readonly onset: { readonly value: number; readonly low: number; readonly high: number } | null
  } | null
  readonly sentence: string
}

const degrees = (angle: Radian): number => (angle * 180) / Math.PI

/** Early and late profiles of the turn, their difference with its simultaneous band, and how the spot grew. */
export function turnChangeFigure(data: TurnChangeFigureData, options: Partial<SheetOptions> = {}): Markup {
  const panels = [profilePanel(data), differencePanel(data)]
  if (data.spot !== null && data.spot.course.length > 1) panels.push(coursePanel(data.spot))
  return chartFigure({ ...data, panels, words: data.sentence }, { id: 'turn-change', ...options })
}

const angleAxis = { title: 'place in the turn (°)', log: false, range: [0, 360] } as const

function spotMarks({ spot }: TurnChangeFigureData): readonly ChartMark[] {
  if (spot === null) return []
  // A spot over the seam of the turn is drawn on both ends.
  const [from, to] = [degrees(spot.from), degrees(spot.to)]
  const parts = [-360, 0, 360].map((shift) => [Math.max(0, from + shift), Math.min(360, to + shift)] as const)
  return parts.filter(([a, b]) => b > a).map(([a, b]) => ({ kind: 'span', tone: 'orange', from: a, to: b }))
}

function profilePanel(data: TurnChangeFigureData): ChartPanel {
  const line = (values: ArrayLike<number>) =>
    data.angles.flatMap((angle, i) => (Number.isNaN(values[i]) ? [] : [{ x: degrees(angle), y: values[i] }]))
  return {
    x: angleAxis,
    y: { title: data.quantity, log: false },
    height: 150,
    marks: [
      ...spotMarks(data),
      { kind: 'line', tone: 'blue', dashed: true, items: line(data.early), label: 'early turns' },
      { kind: 'line', tone: 'red', items: line(data.late), label: 'late turns' },
    ],
  }
}

function differencePanel(data: TurnChangeFigureData): ChartPanel {
  const items = data.angles.flatMap((angle, i) =>
    Number.isNaN(data.local[i]) ? [] : [{ x: degrees(angle), y: data.local[i], low: data.low[i], high: data.high[i] }],
  )
  return {
    x: angleAxis,
    y: { title: 'late − early, local', log: false },
    height: 150,
    marks: [
      ...spotMarks(data),
      { kind: 'band', tone: 'accent', items, label: '95 % for all places together' },
      { kind: 'line', tone: 'accent', items, label: 'change beyond that of the whole turn' },
      { kind: 'level', at: 0, words: '' },
    ],
  }
}

function coursePanel(spot: NonNullable<TurnChangeFigureData['spot']>): ChartPanel {
  const onset: readonly ChartMark[] =
    spot.onset === null
      ? []
      : [{ kind: 'span', tone: 'orange', from: spot.onset.low, to: spot.onset.high, label: 'begins in here (95 %)' }]
  return {
    x: { title: 'turn', log: false },
    y: { title: 'change at the spot', log: false },
    height: 140,
    marks: [
      ...onset,
      {
        kind: 'points',
        tone: 'ink',
        hollow: true,
        items: spot.course.map(({ turn, change }) => ({ x: turn, y: change })),
      },
    ],
  }
}
