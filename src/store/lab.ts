import type { Outcome, Progress } from '../core/terms/index.ts'
import type { CheckOptions, CheckReport } from './check.ts'
import type { Columns } from './columns.ts'
import type { CopyReport } from './copyLab.ts'
import type { History } from './history.ts'
import type { Papers } from './papers.ts'
import type { Records } from './records.ts'
import type { Results } from './results.ts'
import type { EngineKind } from './schema/keepRows.ts'
import type { Setups } from './setups.ts'
import type { TidyReport } from './tidy.ts'
import type { TitledThings } from './titled.ts'

/**
 * Everything that is remembered, in a folder or in a PostgreSQL database; close it when done.
 * Whatever went well is durable. What was kept is never edited: a correction is a new version with who, when and why.
 */
export interface Lab extends AsyncDisposable, Papers {
  /** Folder or address, without a password. */
  readonly where: string
  readonly engine: EngineKind
  readonly readOnly: boolean
  /** One: the lab itself, by the name that its people gave it. */
  readonly about: Pick<TitledThings, 'list' | 'correct' | 'versions'>
  readonly studies: TitledThings
  readonly samples: TitledThings
  readonly setups: Setups
  readonly records: Records
  readonly results: Results
  readonly columns: Columns
  readonly history: History
  /** Holds all bytes and texts against their checksums. */
  check(options?: CheckOptions): Promise<Outcome<CheckReport>>
  /** Clears away what killed processes left before this instant (UTC). */
  tidy(before: string): Promise<Outcome<TidyReport>>
  /** Copies the lab as it stands now into a new folder, which is a lab itself; others may go on writing meanwhile. */
  backup(to: string, progress?: Progress): Promise<Outcome<CopyReport>>
  close(): Promise<void>
}
