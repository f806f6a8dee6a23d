import type { Origin, Outcome, Sha256 } from '../core/terms/index.ts'
import type { Change, ChangeNote } from './change.ts'

/** What a result is of: the points of a record, or the curve through them. */
export const resultKinds = ['reduction', 'fit'] as const

/** Name of one such kind. */
export type ResultKind = (typeof resultKinds)[number]

/** A result without its text. It is never edited: another setup, option, program version or seed makes another result beside it. */
export interface KeptResult {
  /** SHA-256 of kind and origin: what it was made from is what it is. */
  readonly id: Sha256
  readonly kind: ResultKind
  readonly origin: Origin
  /** Of the text. */
  readonly sha256: Sha256
  readonly change: ChangeNote
}

/** `text` is the result as JSON; its bytes are what is compared, so it is kept as it is. */
export interface NewResult {
  readonly kind: ResultKind
  readonly origin: Origin
  readonly text: string
}

export interface AddedResult {
  readonly result: KeptResult
  readonly isNew: boolean
}

export interface ResultFilter {
  readonly kind?: ResultKind
  /** Id of the record. */
  readonly record?: Sha256
  readonly after?: number
  readonly limit?: number
}

export interface Results {
  /**
   * Keeps results, all or none; one that is there already is recognised.
   * Refuses with `resultDiffers` when the same origin gave other bytes before: that must not happen, and somebody has to look.
   */
  add(results: readonly NewResult[], change: Change): Promise<Outcome<AddedResult[]>>
  get(id: Sha256): Promise<Outcome<KeptResult>>
  /** Refuses with `resultChanged` when the text is not what was kept. */
  text(id: Sha256): Promise<Outcome<string>>
  /** In the order in which they were added, so the last of a kind is the one that counts. */
  list(filter?: ResultFilter): Promise<Outcome<KeptResult[]>>
}
