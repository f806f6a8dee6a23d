import type { Outcome } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import type { Engine } from './engine.ts'

/** What was cleared away. */
export interface TidyReport {
  /** Bytes that no row named, and half-written files. */
  readonly files: number
  /** Room freed by the former. */
  readonly bytes: number
}

/**
 * Clears away what killed processes left behind: bytes without a row, and half-written files from before `before` (UTC).
 * It holds the lock of a writer meanwhile. Bytes get their name only under the same lock, so none that are about to get a
 * row are taken for left over. A file still being written that is older than `before` is lost to its process, which says so.
 */
export function tidyLab(engine: Engine, before: string): Promise<Outcome<TidyReport>> {
  const instant = Date.parse(before)
  if (Number.isNaN(instant))
    throw new RangeError(`before must be an instant such as 2026-11-25T09:30:00Z, got ${before}`)
  return attempt(engine.place, () =>
    engine.write(async (writing) => {
      const kept = new Set((await writing.selectFrom('raw').select('sha256').execute()).map(({ sha256 }) => sha256))
      const orphans = (await engine.raw.list(writing)).filter((sha256) => !kept.has(sha256))
      const used = new Set<string>()
      for (const row of await writing.selectFrom('columns').select(['parquet', 'pyramid']).execute()) {
        used.add(row.parquet).add(row.pyramid)
      }
      const unused = (await engine.columns.list(writing)).filter((sha256) => !used.has(sha256))
      const bytes = (await engine.raw.remove(writing, orphans)) + (await engine.columns.remove(writing, unused))
      const parts = (await engine.raw.sweep(instant)) + (await engine.columns.sweep(instant))
      return { files: orphans.length + unused.length + parts, bytes }
    }),
  )
}
