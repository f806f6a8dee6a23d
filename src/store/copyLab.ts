import { type RawBuilder, sql } from 'kysely'
import type { Problem, Progress, Sha256 } from '../core/terms/index.ts'
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
      for (const [table, order] of keptTables) rows += await copyTable({ from, to, table, order })
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

async function copyBytes(source: Engine, target: Engine, { from, to, options }: BytesCopy) {
  const { progress = () => {} } = options
  const raws = await from.selectFrom('raw').select('sha256').orderBy('change').execute()
  const problems: Problem[] = []
  let bytes = 0
  for (const [i, { sha256 }] of raws.entries()) {
    const size = await copyOne(source, target, { sha256, to, problems })
    bytes += size
    progress('records', i + 1, raws.length)
  }
  return { raws: raws.length - problems.length, bytes, problems }
}

async function copyOne(
  source: Engine,
  target: Engine,
  { sha256, to, problems }: { readonly sha256: Sha256; readonly to: Writing; readonly problems: Problem[] },
): Promise<number> {
  const pieces = await source.raw.read(sha256)
  if (pieces === undefined) {
    problems.push(storeProblem('rawMissing', rawMissing(source, sha256)))
    return 0
  }
  const staged = await target.raw.stage(pieces)
  if (staged.sha256 === sha256) await target.raw.settle(to, [staged])
  else {
    staged.discard()
    problems.push(storeProblem('rawChanged', rawChanged(source, sha256)))
    return 0
  }
  return staged.size
}
