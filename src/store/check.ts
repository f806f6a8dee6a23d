import { createHash } from 'node:crypto'
import { sql } from 'kysely'
import type { Outcome, Problem, Progress, Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { checksum } from './checksum.ts'
import type { Engine } from './engine.ts'
import { paperChanged } from './paperRows.ts'
import { type PaperKind, type PaperSubject, paperId } from './papers.ts'
import { rawChanged, rawMissing } from './rawTrouble.ts'
import { isAsKept, resultChanged } from './resultRows.ts'
import { setupChanged } from './setups.ts'
import { storeProblem } from './storeProblem.ts'

/** What was looked at and all that is not as it was kept. */
export interface CheckReport {
  readonly raws: number
  readonly setups: number
  readonly results: number
  /** Versions of papers. */
  readonly papers: number
  readonly problems: readonly Problem[]
}

export interface CheckOptions {
  /** Ids of the records to be looked at with their results, at most 10,000; all of the lab by default. */
  readonly records?: readonly Sha256[]
  readonly progress?: Progress
}

type Wanted = CheckOptions['records']

/** Rows looked at in one go; a result may be long. */
const page = 50

/**
 * Holds all bytes and texts against their checksums, and has the database look at itself.
 * That a result follows from its origin is for whoever can compute: `verify` above this room.
 */
export function checkLab(
  engine: Engine,
  { records, progress = () => {} }: CheckOptions,
): Promise<Outcome<CheckReport>> {
  return attempt(engine.place, async () => {
    const problems: Problem[] = records === undefined ? await databaseProblems(engine) : []
    const raws =
      records ??
      (await engine.read.selectFrom('raw').select('sha256').orderBy('change').execute()).map(({ sha256 }) => sha256)
    for (const [i, id] of raws.entries()) {
      problems.push(...(await rawProblems(engine, id)))
      progress('raw', i + 1, raws.length)
    }
    const setups = await checkSetups(engine, records, problems)
    const results = await checkResults(engine, records, problems)
    const papers = await checkPapers(engine, records, problems)
    return { raws: raws.length, setups, results, papers, problems }
  })
}

async function rawProblems(engine: Engine, id: Sha256): Promise<Problem[]> {
  const bytes = await engine.raw.read(id)
  if (bytes === undefined) return [storeProblem('rawMissing', rawMissing(engine, id))]
  const hash = createHash('sha256')
  for await (const piece of bytes) hash.update(piece)
  return hash.digest('hex') === id ? [] : [storeProblem('rawChanged', rawChanged(engine, id))]
}

/** All setups, or those that the results of these records were made with. */
async function checkSetups({ read, place }: Engine, records: Wanted, problems: Problem[]): Promise<number> {
  let query = read.selectFrom('setups').select(['sha256', 'text']).orderBy('change')
  if (records !== undefined) {
    query = query.where(
      'sha256',
      'in',
      read
        .selectFrom('results')
        .select('setup')
        .where('raw', 'in', [...records]),
    )
  }
  const rows = await query.execute()
  for (const { sha256, text } of rows) {
    if (checksum(text) !== sha256) problems.push(storeProblem('setupChanged', setupChanged(place, sha256)))
  }
  return rows.length
}

async function checkResults(engine: Engine, records: Wanted, problems: Problem[]): Promise<number> {
  let count = 0
  for (let after = 0; ; ) {
    let query = engine.read.selectFrom('results').selectAll().where('change', '>', after).orderBy('change').limit(page)
    if (records !== undefined) query = query.where('raw', 'in', [...records])
    const rows = await query.execute()
    for (const row of rows) {
      if (!isAsKept(row)) problems.push(storeProblem('resultChanged', resultChanged(engine.place, row.id)))
    }
    count += rows.length
    const last = rows.at(-1)
    if (last === undefined) return count
    after = last.change
  }
}

/** All papers, or those about these records. */
async function checkPapers({ read }: Engine, records: Wanted, problems: Problem[]): Promise<number> {
  let count = 0
  for (let after = 0; ; ) {
    let query = read.selectFrom('paper_versions').selectAll().where('change', '>', after).orderBy('change').limit(page)
    if (records !== undefined) query = query.where('subject', '=', 'record').where('subject_id', 'in', [...records])
    const rows = await query.execute()
    for (const { subject, subject_id: subjectId, kind, name, content, sha256 } of rows) {
      if (checksum(content) === sha256) continue
      const id = paperId({ subject: subject as PaperSubject, subjectId, kind: kind as PaperKind, name })
      problems.push(storeProblem('paperChanged', paperChanged(id)))
    }
    count += rows.length
    const last = rows.at(-1)
    if (last === undefined) return count
    after = last.change
  }
}

/** SQLite looks at its pages and its references; PostgreSQL keeps both itself. */
async function databaseProblems({ kind, read, place }: Engine): Promise<Problem[]> {
  if (kind !== 'sqlite') return []
  const pages = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(read)
  const said = pages.rows.map(({ integrity_check }) => integrity_check).filter((line) => line !== 'ok')
  const links = await sql<{ table: string; parent: string }>`pragma foreign_key_check`.execute(read)
  const mend = 'Restore the lab from its latest backup into a new place; leave this one as it is.'
  return [
    ...said.map((line) => storeProblem('labDamaged', { place, what: `The database is damaged: ${line}.`, mend })),
    ...links.rows.map(({ table, parent }) =>
      storeProblem('linkBroken', { place, what: `A row of ${table} names one of ${parent} that is gone.`, mend }),
    ),
  ]
}
