import type { Channels } from '../../core/terms/index.ts'
import { type NumberTable, numberTableToParquet } from './parquetTable.ts'

/** The columns of a record as a Parquet file: one DOUBLE column a channel, in SI, NaN where a cell was empty. */
export function columnsToParquet(channels: Channels): Uint8Array {
  return numberTableToParquet({
    rows: channels.rows,
    names: channels.names,
    read: channels.read as NumberTable['read'], // asked only for the names given here
    notes: {},
  })
}
