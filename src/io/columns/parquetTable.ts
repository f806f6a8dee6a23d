import { parquetMetadataAsync, parquetRead } from 'hyparquet'
import { ByteWriter, ParquetWriter } from 'hyparquet-writer'

/** Rows of a row group: a part of a long record can be read without the rest, and the writer holds one group at a time. */
const rowGroupRows = 262_144

/** A table of numbers in Parquet's terms. `read` gives rows `from` to `to` (exclusive) of one column. */
export interface NumberTable {
  readonly rows: number
  readonly names: readonly string[]
  read(name: string, from: number, to: number): Float64Array
  /** Words that belong to the table as a whole. */
  readonly notes: Readonly<Record<string, string>>
}

/** The table as a Parquet file; equal tables give equal bytes. Values come back bit for bit, NaN and −0 among them. */
export function numberTableToParquet({ rows, names, read, notes }: NumberTable): Uint8Array {
  const writer = new ByteWriter()
  const columns = names.map((name) => ({ name, type: 'DOUBLE', repetition_type: 'REQUIRED' }) as const)
  const parquet = new ParquetWriter({
    writer,
    schema: [{ name: 'table', num_children: names.length }, ...columns],
    createdBy: 'kufe',
    kvMetadata: Object.entries(notes).map(([key, value]) => ({ key, value })),
  })
  for (let from = 0; from < rows; from += rowGroupRows) {
    const to = Math.min(from + rowGroupRows, rows)
    // A dictionary takes 0 and −0 for one value, so every number is written as it stands.
    const columnData = names.map((name) => ({ name, data: read(name, from, to), encoding: 'PLAIN' as const }))
    parquet.write({ columnData, rowGroupSize: rowGroupRows })
  }
  parquet.finish()
  return new Uint8Array(writer.getBuffer())
}

/** A table that `numberTableToParquet` wrote, in memory; only the columns of `wanted` where it is given. */
export async function parquetToNumberTable(bytes: Uint8Array, wanted?: readonly string[]): Promise<NumberTable> {
  const plain = new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength) // a Buffer's own slice shares memory
  const file = {
    byteLength: plain.byteLength,
    slice: (from: number, to?: number) => plain.slice(from, to).buffer,
  }
  const metadata = await parquetMetadataAsync(file)
  const rows = Number(metadata.num_rows)
  const names = metadata.schema.slice(1).map(({ name }) => name)
  const chosen = names.filter((name) => wanted?.includes(name) ?? true)
  const columns = new Map(chosen.map((name) => [name, new Float64Array(rows)]))
  await parquetRead({
    file,
    metadata,
    columns: chosen,
    onChunk: ({ columnName, columnData, rowStart }) =>
      columns.get(columnName)?.set(columnData as Float64Array, rowStart), // the writer above makes doubles only
  })
  const notes = Object.fromEntries((metadata.key_value_metadata ?? []).map(({ key, value }) => [key, value ?? '']))
  return {
    rows,
    names: chosen,
    notes,
    read(name, from, to) {
      const column = columns.get(name)
      if (column === undefined) throw new RangeError(`the table has no column ${name}; it has ${chosen.join(', ')}`)
      return column.subarray(from, to)
    },
  }
}
