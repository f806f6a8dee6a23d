import type { Outcome, Sha256 } from '../core/terms/index.ts'
import type { Bytes } from './bytes/byteStore.ts'
import type { Change, ChangeNote } from './change.ts'
import type { Correction } from './titled.ts'

/** What people say about an imported file. All of it may be corrected later. */
export interface RecordFacts {
  /** Name of the file as it came: a text to be read, never a path. */
  readonly name: string
  /** Ids; null where nobody has said yet. */
  readonly study: string | null
  readonly sample: string | null
  /** From 1. A replicate is a new mounting with fresh surfaces. */
  readonly replicate: number | null
  readonly mountedBy: string | null
  readonly ballSet: string | null
  /** Day of the measurement, 2026-11-25. */
  readonly day: string | null
  /** The setup that it was measured with. */
  readonly setup: Sha256 | null
}

/** One imported file as it is known from one change to the next. */
export interface KeptRecord extends RecordFacts {
  /** SHA-256 of the raw bytes: the same bytes are the same record, in every lab. */
  readonly id: Sha256
  readonly size: number
  readonly version: number
  readonly supersedes: number | null
  /** When and by whom it was added, and the change that made this version. */
  readonly added: ChangeNote
  readonly change: ChangeNote
}

export type NewRecord = { readonly bytes: Bytes; readonly name: string } & Partial<RecordFacts>

/** `isNew` false: the bytes were there already, and this is the record that has them. */
export interface AddedRecord {
  readonly record: KeptRecord
  readonly isNew: boolean
}

export interface RecordFilter {
  readonly study?: string
  readonly sample?: string
  /** Only records added after the change of this number, for pages. */
  readonly after?: number
  readonly limit?: number
}

export interface Records {
  /**
   * Keeps records, all or none; done means that their bytes and rows are on the disk.
   * One call waits for the disk once for all its rows, so many at once are faster. They are staged one after the other.
   */
  add(records: readonly NewRecord[], change: Change): Promise<Outcome<AddedRecord[]>>
  /** Adds a version that differs from the last in `facts`. The bytes never change. */
  correct(id: Sha256, facts: Partial<RecordFacts>, correction: Correction): Promise<Outcome<KeptRecord>>
  /** The latest version, by the id or by its first four or more digits. */
  get(id: string): Promise<Outcome<KeptRecord>>
  /** Latest versions, in the order in which they were added. */
  list(filter?: RecordFilter): Promise<Outcome<KeptRecord[]>>
  versions(id: Sha256): Promise<Outcome<KeptRecord[]>>
  /** The raw bytes. Refuses with `rawMissing` or `rawChanged` when they are not what was kept. */
  bytes(id: Sha256): Promise<Outcome<Uint8Array>>
  /** The same piece by piece; reading on throws `StoreTrouble` at the end when the checksum is another. */
  pieces(id: Sha256): Promise<Outcome<AsyncIterable<Uint8Array>>>
}
