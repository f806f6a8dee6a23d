import type { Place } from '../core/terms/index.ts'
import type { ByteStore } from './bytes/byteStore.ts'
import type { EngineKind } from './schema/keepRows.ts'
import type { Reading, Writing } from './schema/tables.ts'

/** A database with its bytes. Two of them hold labs, SQLite in a folder and PostgreSQL, and the same queries run on both. */
export interface Engine {
  readonly kind: EngineKind
  /** Folder or address as people may see it: without a password. */
  readonly where: string
  readonly place: Place
  readonly readOnly: boolean
  /** For queries alone. */
  readonly read: Reading
  /**
   * Runs `act` in a transaction while nobody else writes, in this process or another; done means durable.
   * Waits for others as long as the lab was opened to be patient, then refuses with `labBusy`.
   */
  write<T>(act: (writing: Writing) => Promise<T>): Promise<T>
  /** Runs `act` on the lab as it stands now, whatever others write meanwhile. */
  snapshot<T>(act: (reading: Writing) => Promise<T>): Promise<T>
  /** Whether a making that has not been finished would explain an empty database; otherwise something was lost. */
  readonly unfinished: boolean
  /** To be called when the lab has been made: from now on an empty database is a damage. */
  finish(): void
  readonly raw: ByteStore
  readonly columns: ByteStore
  close(): Promise<void>
}
