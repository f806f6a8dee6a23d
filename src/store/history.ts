import type { Outcome } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import type { Change, ChangeNote } from './change.ts'
import type { Engine } from './engine.ts'
import { inBatches } from './inBatches.ts'
import type { Writing } from './schema/tables.ts'

/** What a change was about. */
export type SubjectKind = 'lab' | 'study' | 'sample' | 'setup' | 'record' | 'result' | 'paper'

/** One thing that a change made or corrected. */
export interface Subject {
  readonly what: 'created' | 'corrected'
  readonly kind: SubjectKind
  readonly id: string
  /** null for what has no versions: setups and results. */
  readonly version: number | null
}

/** One line of the history. */
export interface HistoryEntry extends Subject {
  readonly change: ChangeNote
}

export interface HistoryFilter {
  readonly kind?: SubjectKind
  readonly id?: string
  /** Only changes with a higher number, for pages. */
  readonly after?: number
  /** 1,000 by default. */
  readonly limit?: number
}

/** The history of the lab, oldest first. It grows and never changes. */
export interface History {
  list(filter?: HistoryFilter): Promise<Outcome<HistoryEntry[]>>
}

export const historyOf = (engine: Engine): History => ({
  list: ({ kind, id, after = 0, limit = 1000 } = {}) =>
    attempt(engine.place, async () => {
      let query = engine.read.selectFrom('history').selectAll().where('seq', '>', after).orderBy('seq').limit(limit)
      if (kind !== undefined) query = query.where('kind', '=', kind)
      if (id !== undefined) query = query.where('id', '=', id)
      const rows = await query.execute()
      return rows.map(({ seq, at, who, why, what, kind, id, version }) => ({
        ...{ what, kind: kind as SubjectKind, id, version }, // written by `note` alone
        change: { number: seq, at, who, why },
      }))
    }),
})

/** Notes a change of several things and gives the number of each line, in their order. Must run within a write: the numbers have no gap. */
export async function note(writing: Writing, change: Change, subjects: readonly Subject[]): Promise<number[]> {
  const last = await writing.selectFrom('history').select('seq').orderBy('seq', 'desc').limit(1).executeTakeFirst()
  const first = (last?.seq ?? 0) + 1
  const { at, who, why } = change
  const rows = subjects.map((subject, i) => ({ seq: first + i, at, who, why, ...subject }))
  await inBatches(rows, (batch) => writing.insertInto('history').values(batch).execute())
  return rows.map(({ seq }) => seq)
}
