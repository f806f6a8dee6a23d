import type { Sha256 } from '../../core/terms/index.ts'
import type { Reading, Writing } from '../schema/tables.ts'

/** Bytes in memory or one piece after the other; a long record need never be in memory as a whole. */
export type Bytes = Uint8Array | Iterable<Uint8Array> | AsyncIterable<Uint8Array>

/** Bytes that lie where nobody sees them yet. */
export interface Staged {
  readonly sha256: Sha256
  readonly size: number
  /** Forgets them; no work once they were settled. */
  discard(): void
}

/** Bytes by their checksum: files of a folder, or rows of a database. One contract suite runs on both. */
export interface ByteStore {
  stage(bytes: Bytes): Promise<Staged>
  /** Waits until staged bytes are on the disk; many at once cost little more than one. */
  harden(staged: readonly Staged[]): Promise<void>
  /** Gives staged bytes their name, within the transaction whose rows name them. Bytes that are there already stay. */
  settle(writing: Writing, staged: readonly Staged[]): Promise<void>
  /** The bytes piece by piece, as they are; undefined where there are none. Whoever keeps them compares the checksum. */
  read(sha256: Sha256): Promise<AsyncIterable<Uint8Array> | undefined>
  /** All checksums, also of bytes that no row names. */
  list(reading: Reading): Promise<Sha256[]>
  /** Removes bytes that no row names; to be called within a write, where nothing is half-way in. Gives the bytes freed. */
  remove(writing: Writing, sha256s: readonly Sha256[]): Promise<number>
  /** Removes what a killed process left unsettled before this instant (ms since 1970). Gives how many. */
  sweep(before: number): Promise<number>
}
