import type { Outcome, Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import type { Staged } from './bytes/byteStore.ts'
import { joinPieces } from './bytes/pieces.ts'
import { checksum } from './checksum.ts'
import type { Engine } from './engine.ts'
import { notThere } from './notThere.ts'
import type { Writing } from './schema/tables.ts'

/** The columns of a record in a form that is quick to read. Made from the raw bytes and made again whenever they are missing. */
export interface ColumnFiles {
  /** Id of the record. */
  readonly raw: Sha256
  /** Checksum of whatever decided how the table was read, chosen by whoever reads: other answers make other columns. */
  readonly reading: string
  readonly rows: number
  /** Program that made them. */
  readonly program: string
  readonly parquet: Uint8Array
  readonly pyramid: Uint8Array
}

export interface Columns {
  /** Keeps columns in place of those that were there. They are not part of the history. */
  put(files: readonly ColumnFiles[]): Promise<Outcome<number>>
  /** undefined where they have to be made (again): never made, lost, or damaged. */
  get(raw: Sha256, reading: string): Promise<Outcome<ColumnFiles | undefined>>
}

export const columnsOf = (engine: Engine): Columns => ({
  put: (files) =>
    attempt(engine.place, async () => {
      const staged: { parquet: Staged; pyramid: Staged; files: ColumnFiles }[] = []
      try {
        for (const one of files) {
          const parquet = await engine.columns.stage(one.parquet)
          const pyramid = await engine.columns.stage(one.pyramid)
          staged.push({ parquet, pyramid, files: one })
        }
        return await engine.write(async (writing) => {
          for (const { parquet, pyramid, files } of staged) {
            await putRow(writing, { ...files, parquet: parquet.sha256, pyramid: pyramid.sha256 })
            await engine.columns.settle(writing, [parquet, pyramid])
          }
          return staged.length
        })
      } finally {
        for (const { parquet, pyramid } of staged) for (const one of [parquet, pyramid]) one.discard()
      }
    }),
  get: (raw, reading) =>
    attempt(engine.place, async () => {
      const query = engine.read.selectFrom('columns').selectAll().where('raw', '=', raw)
      const row = await query.where('reading', '=', reading).executeTakeFirst()
      if (row === undefined) return undefined
      const parquet = await wholeBytes(engine, row.parquet)
      const pyramid = await wholeBytes(engine, row.pyramid)
      return parquet && pyramid && { ...row, parquet, pyramid }
    }),
})

type Named = Omit<ColumnFiles, 'parquet' | 'pyramid'> & { readonly parquet: Sha256; readonly pyramid: Sha256 }

async function putRow(writing: Writing, { raw, reading, rows, program, parquet, pyramid }: Named): Promise<void> {
  const known = await writing.selectFrom('raw').select('sha256').where('sha256', '=', raw).executeTakeFirst()
  if (known === undefined) notThere('record', raw)
  await writing.deleteFrom('columns').where('raw', '=', raw).where('reading', '=', reading).execute()
  await writing.insertInto('columns').values({ raw, reading, rows, program, parquet, pyramid }).execute()
}

async function wholeBytes(engine: Engine, sha256: Sha256): Promise<Uint8Array | undefined> {
  const pieces = await engine.columns.read(sha256)
  if (pieces === undefined) return undefined
  const bytes = await joinPieces(pieces)
  return checksum(bytes) === sha256 ? bytes : undefined
}
