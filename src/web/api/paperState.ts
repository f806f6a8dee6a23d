import type { Refusal } from './request.ts'

/** A kept document about a study, a record or the lab. Never edited: a save is a new version. */
export interface Paper<T> {
  readonly version: number
  readonly content: T
  readonly by: string
  readonly why: string
  readonly at: string
}

/**
 * How a paper stands. `reading` not here yet · `kept` as on the server · `unsaved` typed, about to be sent · `saving` under way ·
 * `waiting` the server is away, it is sent when it is back · `superseded` somebody wrote in between: a person chooses ·
 * `refused` the server did not take it, `refusal` says why.
 */
export type PaperPhase = 'reading' | 'kept' | 'unsaved' | 'saving' | 'waiting' | 'superseded' | 'refused'

export interface PaperState<T> {
  readonly phase: PaperPhase
  /** What stands here now, typed changes in it; null where there is none yet. */
  readonly content: T | null
  /** Version that the content rests on; 0 for none. */
  readonly version: number
  /** The newer version of somebody else, while a person has to choose. */
  readonly theirs: Paper<T> | null
  /** A newer version that was taken in since the page opened, to be told once. */
  readonly takenFrom: Paper<T> | null
  readonly refusal: Refusal | undefined
}
