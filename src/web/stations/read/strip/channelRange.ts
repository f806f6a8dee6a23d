import type { ChannelName, RecordStretch } from '../../../../core/terms/index.ts'
import type { Tile } from './tile.ts'

/**
 * From where to where a channel runs while the bodies touch: a gap of millimetres while they are apart would leave nothing of the
 * micrometres that matter. All of it where nothing was in contact; undefined without a number.
 */
export function channelRange(
  tile: Tile,
  name: ChannelName,
  stretches: readonly RecordStretch[],
): readonly [number, number] | undefined {
  const apart = stretches.filter(({ kind }) => kind === 'blank' || kind === 'outOfContact')
  const width = tile.at.length > 1 ? tile.at[1] - tile.at[0] : 0
  const touches = (time: number): boolean => !apart.some(({ from, to }) => time + width >= from && time - width <= to)
  return within(tile, name, touches) ?? within(tile, name, () => true)
}

function within(
  tile: Tile,
  name: ChannelName,
  counts: (time: number) => boolean,
): readonly [number, number] | undefined {
  const channel = tile.channels.get(name)
  if (channel === undefined) return undefined
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let entry = 0; entry < tile.at.length; entry++) {
    const min = channel.min[entry]
    const max = channel.max[entry]
    if (!Number.isFinite(min) || !Number.isFinite(max) || !counts(tile.at[entry])) continue
    if (min < low) low = min
    if (max > high) high = max
  }
  return low <= high ? [low, high] : undefined
}
