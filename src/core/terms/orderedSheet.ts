import type { Metre, Second } from './si.ts'

/** What is read at a check: a quantity in SI, or `yes` for what is done or not. */
export type CheckDimension = 'force' | 'torque' | 'length' | 'temperature' | 'ratio' | 'yes'

/** A reading that the sheet has a box for. A limit that is null does not exist. */
export interface SheetCheck {
  readonly read: string
  readonly dimension: CheckDimension
  readonly low: number | null
  readonly high: number | null
  /** The acceptable range in words. */
  readonly accept: string
  /** What to do if the reading lies outside. */
  readonly otherwise: string
}

/** One thing to do. Its cautions are printed before it. */
export interface SheetEntry {
  /** Stable name, by which answers find it. */
  readonly id: string
  readonly cautions: readonly string[]
  readonly text: string
  readonly check: SheetCheck | null
  readonly duration: Second
  readonly distance: Metre
}

/** A part of the job with its entries in their order. */
export interface SheetPart {
  readonly name: string
  readonly heading: string
  readonly entries: readonly SheetEntry[]
}

/** A step of the sweep as it is printed. */
export interface SheetStepRow {
  readonly step: number
  readonly slidingSpeed: number
  readonly angularVelocity: number
  readonly dwell: Second
  readonly turns: number
}

/** A run sheet: the ordered steps and checks of one record. SI throughout; `text` and `accept` are for people. */
export interface OrderedSheet {
  readonly title: string
  readonly subtitle: string
  /** What stands above everything else. */
  readonly foreword: readonly string[]
  readonly parts: readonly SheetPart[]
  readonly sweep: readonly SheetStepRow[]
  readonly totals: { readonly time: Second; readonly distance: Metre }
}

/** What was read or done at one entry: an SI value, `true` or `false`, or words where nothing could be read. */
export interface SheetAnswer {
  readonly id: string
  readonly value: number | boolean | null
  readonly note?: string
}

/** How an answer stands to its check. `open`: nobody has answered yet. */
export interface JudgedAnswer extends SheetAnswer {
  readonly state: 'within' | 'outside' | 'open'
  /** What was read and what it means, in words. */
  readonly sentence: string
}

/** A sheet with what was answered: what is kept with a record and what its report prints. */
export interface AnsweredSheet {
  readonly sheet: OrderedSheet
  readonly answers: readonly SheetAnswer[]
}
