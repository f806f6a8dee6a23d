import { type ChannelName, channelNames } from '../../../../core/terms/index.ts'
import type { TraceAnswer } from '../../../../server/contract/index.ts'
import type { Tile, TileChannel } from './tile.ts'

/** A tile as it came over the wire. */
export function tileFrom({ from, to, columns, exact }: Pick<TraceAnswer, 'from' | 'to' | 'columns' | 'exact'>): Tile {
  if (exact !== null) {
    const channels = entries(exact.values).map(([name, values]): [ChannelName, TileChannel] => {
      const numbers = numbersOf(values)
      return [name, { min: numbers, max: numbers }]
    })
    return { at: Float64Array.from(exact.time), channels: new Map(channels), exact: true }
  }
  const channels = entries(columns).map(([name, { min, max }]): [ChannelName, TileChannel] => [
    name,
    { min: numbersOf(min), max: numbersOf(max) },
  ])
  const count = channels[0]?.[1].min.length ?? 0
  const width = (to - from) / Math.max(1, count)
  const at = Float64Array.from({ length: count }, (_, column) => from + (column + 0.5) * width)
  return { at, channels: new Map(channels), exact: false }
}

const entries = <T>(of: Readonly<Record<string, T>>): readonly [ChannelName, T][] =>
  channelNames.flatMap((name): [ChannelName, T][] => (of[name] === undefined ? [] : [[name, of[name]]]))

const numbersOf = (values: readonly (number | null)[]): Float64Array =>
  Float64Array.from(values, (value) => value ?? Number.NaN)
