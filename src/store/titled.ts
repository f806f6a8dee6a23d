import type { Outcome } from '../core/terms/index.ts'
import type { Change, ChangeNote } from './change.ts'

/** A lab, a study or a sample. */
export type TitledKind = 'lab' | 'study' | 'sample'

/** What people say about one of them; `facts` is whatever else a use case knows, as JSON. */
export interface Titles {
  readonly title: string
  readonly note: string
  readonly facts: Readonly<Record<string, unknown>>
}

export interface Titled extends Titles {
  /** Never changes; chosen by people, see `checkedIdentifier`. */
  readonly id: string
  readonly version: number
  /** The version before this one, null for the first. */
  readonly supersedes: number | null
  readonly change: ChangeNote
}

export type NewTitled = Pick<Titled, 'id' | 'title'> & Partial<Titles>

/** A correction names the version that its author saw, so that nobody overwrites what he has not read. */
export type Correction = Change & { readonly supersedes: number }

export interface TitledThings {
  add(thing: NewTitled, change: Change): Promise<Outcome<Titled>>
  /** Adds a version that differs from the last in `titles`. */
  correct(id: string, titles: Partial<Titles>, correction: Correction): Promise<Outcome<Titled>>
  get(id: string): Promise<Outcome<Titled>>
  /** The latest version of each, in order of the ids. */
  list(): Promise<Outcome<Titled[]>>
  /** All versions, oldest first. */
  versions(id: string): Promise<Outcome<Titled[]>>
}
