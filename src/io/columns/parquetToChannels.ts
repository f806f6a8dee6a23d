import { type ChannelName, type Channels, channelNames, channelsInMemory } from '../../core/terms/index.ts'
import { parquetToNumberTable } from './parquetTable.ts'

/** The columns that `columnsToParquet` wrote, in memory; only those of `wanted` where it is given. */
export async function parquetToChannels(bytes: Uint8Array, wanted?: readonly ChannelName[]): Promise<Channels> {
  const table = await parquetToNumberTable(bytes, wanted)
  const columns: Partial<Record<ChannelName, Float64Array>> = {}
  for (const name of channelNames) {
    if (table.names.includes(name)) columns[name] = table.read(name, 0, table.rows)
  }
  return channelsInMemory(columns)
}
