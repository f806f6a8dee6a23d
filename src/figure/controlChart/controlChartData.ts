import type { Words } from '../sheet.ts'

/** One value on the chart. */
export interface ChartedValue {
  /** Such as the day; shown along the axis. */
  readonly label: string
  readonly value: number
}

/** An alarm on the chart: the value that completed a pattern, and where the pattern began. */
export interface ChartedAlarm {
  readonly at: number
  readonly from: number
  /** What alarmed, in words. */
  readonly words: string
  /** `answered`: somebody has said what it was. */
  readonly state: 'open' | 'answered'
}

/** A control chart of single values with moving ranges and, where it is kept, a weighted mean. */
export interface ControlChartData extends Words {
  /** What is charted, with its unit. */
  readonly quantity: string
  readonly values: readonly ChartedValue[]
  readonly centre: number
  readonly lower: number
  readonly upper: number
  /** From the second value on. */
  readonly movingRanges: readonly number[]
  readonly rangeUpper: number
  /** Values, from the first, from which the limits come. */
  readonly baseline: number
  readonly ewma: readonly { readonly mean: number; readonly lower: number; readonly upper: number }[] | null
  readonly alarms: readonly ChartedAlarm[]
}
