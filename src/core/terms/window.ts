import type { MetrePerSecond } from './si.ts'

/** What may end belief in a curve: at slow speeds the first ones, at fast speeds inertia and drag; `data` is where the record itself ends. */
export const windowLimits = [
  'torqueFloor',
  'torqueCeiling',
  'forceZero',
  'partialTurn',
  'windUp',
  'inertia',
  'drag',
  'contact',
  'data',
] as const

/** Name of one such limit. */
export type WindowLimitName = (typeof windowLimits)[number]

/** One limit on the speeds that may be believed. */
export interface WindowLimit {
  readonly name: WindowLimitName
  /** Which end it cuts. */
  readonly end: 'low' | 'high'
  /** Speed from which (low) or to which (high) this limit allows belief; null where it does not bite within the data. */
  readonly slidingSpeed: MetrePerSecond | null
  /** The number that decided and what it was held against. */
  readonly seen: number | null
  readonly limit: number | null
  readonly unit: string
  readonly sentence: string
}

/** Bias that a partial turn may leave at one point: |sin πN|/(πN) times the ripple seen, as a share of friction. */
export interface PartialTurnBias {
  readonly step: number
  readonly turns: number
  readonly bound: number
}

/** From which to which speed a curve may be believed, and whether its slow plateau is real. */
export interface BelievableWindow {
  readonly low: MetrePerSecond | null
  readonly high: MetrePerSecond | null
  readonly limits: readonly WindowLimit[]
  readonly partialTurnBias: readonly PartialTurnBias[]
  readonly sentence: string
  readonly plateau: {
    readonly verdict: 'real' | 'doubtful' | 'notReached' | 'cannotTell'
    readonly sentence: string
  }
}
