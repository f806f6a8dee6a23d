import { type RawBuilder, sql } from 'kysely'
import type { Problem, Progress, Sha256 } from '../core/terms/index.ts'
import type { Staged } from './bytes/byteStore.ts'
import type { Engine } from './engine.ts'
import { inBatches } from './inBatches.ts'
import { rawChanged, rawMissing } from './rawTrouble.ts'
import { checkNew, runSteps, schemaVersion } from './schema/migrate.ts'
import type { Migration } from './schema/migration.ts'
import { keptTables, type Writing } from './schema/tables.ts'
import { storeProblem } from './storeProblem.ts'

/** What a copy holds, and what the original had lost already. */
export interface CopyReport {
  readonly where: string
  readonly rows: number
  readonly raws: number
  readonly bytes: number
  /** Raw bytes that were gone or changed in the original; their rows are in the copy, they are not. */
  readonly problems: readonly Problem[]
}

export interface CopyOptions {
  readonly migrations: readonly Migration[]
  readonly progress?: Progress
}

/**
 * Copies a lab as it stands at one instant, from either kind of database to either, while others go on writing to it.
 * All raw bytes are held against their checksums on the way. The copy becomes a lab in one instant, at the commit.
 * Columns are left out: they are made again when somebody looks.
 */
export async function copyLab(source: Engine, target: Engine, options: CopyOptions): Promise<CopyReport> {
  const report = await source.snapshot((from) =>
    target.write(async (to) => {
      await checkNew(target, to)
      const version = await schemaVersion(source, from)
      await runSteps(target, to, { from: 0, to: version, migrations: options.migrations })
      let rows = 0
      for (const [table, order, since] of keptTables) {
        if (since <= version) rows += await copyTable({ from, to, table, order })
      }
      const copied = await copyBytes(source, target, { from, to, options })
      return { where: target.where, rows, ...copied }
    }),
  )
  target.finish()
  return report
}

interface TableCopy {
  readonly from: Writing
  readonly to: Writing
  readonly table: string
  readonly order: string
}

/** Rows of one page; a result may be long. */
const page = 200

/** Copies whatever columns the table has: the schema may be that of an older program. */
async function copyTable({ from, to, table, order }: TableCopy): Promise<number> {
  let count = 0
  for (let after = -1; ; ) {
    const rows = await pageOf(from, { table, order, after })
    if (rows.length === 0) return count
    const names = Object.keys(rows[0])
    const into: RawBuilder<unknown> = sql`${sql.table(table)} (${sql.join(names.map((name) => sql.ref(name)))})`
    await inBatches(rows, async (batch) => {
      const values = batch.map((row) => sql`(${sql.join(names.map((name) => sql.val(row[name])))})`)
      await sql`insert into ${into} values ${sql.join(values)}`.execute(to)
    })
    count += rows.length
    after = Number(rows.at(-1)?.[order])
  }
}

async function pageOf(
  from: Writing,
  { table, order, after }: { readonly table: string; readonly order: string; readonly after: number },
): Promise<Record<string, unknown>[]> {
  const query = sql<Record<string, unknown>>`select * from ${sql.table(table)} where ${sql.ref(order)} > ${after}
    order by ${sql.ref(order)} limit ${page}`
  return (await query.execute(from)).rows
}

interface BytesCopy {
  readonly from: Writing
  readonly to: Writing
  readonly options: CopyOptions
}

/** Records copied before the disk is waited for. */
const atOnce = 32

async function copyBytes(source: Engine, target: Engine, { from, to, options }: BytesCopy) {
  const { progress = () => {} } = options
  const raws = await from.selectFrom('raw').select('sha256').orderBy('change').execute()
  const problems: Problem[] = []
  let [bytes, done] = [0, 0]
  for (let first = 0; first < raws.length; first += atOnce) {
    const staged: Staged[] = []
    for (const { sha256 } of raws.slice(first, first + atOnce)) {
      const copied = await stageCopy(source, target, sha256)
      if ('kind' in copied) problems.push(copied)
      else staged.push(copied)
      progress('records', ++done, raws.length)
    }
    await target.raw.harden(staged)
    await target.raw.settle(to, staged)
    bytes += staged.reduce((sum, { size }) => sum + size, 0)
  }
  return { raws: raws.length - problems.length, bytes, problems }
}

/** The bytes on their way into the copy, or what is wrong with them. */
async function stageCopy(source: Engine, target: Engine, sha256: Sha256): Promise<Staged | Problem> {
  const pieces = await source.raw.read(sha256)
  if (pieces === undefined) return storeProblem('rawMissing', rawMissing(source, sha256))
  const staged = await target.raw.stage(pieces)
  if (staged.sha256 === sha256) return staged
  staged.discard()
  return storeProblem('rawChanged', rawChanged(source, sha256))
}
