import type { SheetOptions, Words } from '../sheet.ts'

/** Which of the colours and shapes a series has; a shape goes with each, so that colour never stands alone. */
export const tones = ['accent', 'blue', 'red', 'orange', 'purple', 'ink', 'quiet'] as const

/** Name of one of them. */
export type Tone = (typeof tones)[number]

/** A point with its interval, where it has one, and words for who hovers over it. */
export interface ChartPoint {
  readonly x: number
  readonly y: number
  readonly low?: number
  readonly high?: number
  readonly words?: string
}

/** What a panel shows. What has a label stands in its legend. */
export type ChartMark =
  | {
      readonly kind: 'points'
      readonly tone: Tone
      readonly items: readonly ChartPoint[]
      readonly hollow?: boolean
      readonly label?: string
    }
  | {
      readonly kind: 'line'
      readonly tone: Tone
      readonly items: readonly { readonly x: number; readonly y: number }[]
      readonly dashed?: boolean
      readonly label?: string
    }
  | {
      readonly kind: 'band'
      readonly tone: Tone
      readonly items: readonly { readonly x: number; readonly low: number; readonly high: number }[]
      readonly label?: string
    }
  /** A stretch of the axis from left to right. */
  | { readonly kind: 'span'; readonly tone: Tone; readonly from: number; readonly to: number; readonly label?: string }
  /** A level line with words on it. */
  | { readonly kind: 'level'; readonly at: number; readonly words: string }

/** One axis; its range follows from the marks where none is given. */
export interface ChartAxis {
  readonly title: string
  readonly log: boolean
  readonly range?: readonly [number, number]
}

/** One plot with its marks. */
export interface ChartPanel {
  readonly x: ChartAxis
  readonly y: ChartAxis
  /** Of the plot in pixels, 60 to 1200; 220 where left out. */
  readonly height?: number
  readonly marks: readonly ChartMark[]
}

/** Panels above each other. */
export interface ChartData extends Words {
  readonly panels: readonly ChartPanel[]
  /** The chart in words, for people who hear it. */
  readonly words: string
}

export const chartDefaults: SheetOptions = { palette: 'light', width: 880, id: 'chart' }
