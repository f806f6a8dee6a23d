import type { HeldLab, UploadArea } from '../bench/serve/index.ts'
import type { JobBoard } from './jobs/jobBoard.ts'
import type { ColumnShelf } from './threads/columnShelf.ts'
import type { TaskPool } from './threads/taskPool.ts'

/** What the routes work with. */
export interface ServerDesk {
  readonly held: HeldLab
  readonly pool: TaskPool
  readonly jobs: JobBoard
  readonly uploads: UploadArea
  readonly columns: ColumnShelf
  /** Ends when the server closes: whatever waits for news lets go then. */
  readonly closing: AbortSignal
}
