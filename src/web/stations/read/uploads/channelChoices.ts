import { type Dimension, unitsFor } from '../../../../core/quantity/index.ts'
import { type ChannelName, channelNames } from '../../../../core/terms/index.ts'
import { channelWords } from '../../../../figure/index.ts'

/** What a column may be, in words. */
export const channelChoices: readonly { readonly channel: ChannelName; readonly words: string }[] = channelNames.map(
  (channel) => ({ channel, words: wordsOf(channel) }),
)

export function wordsOf(channel: ChannelName | null): string {
  if (channel === null) return 'left aside'
  if (channel === 'time' || channel === 'step') return channel === 'time' ? 'time' : 'step number'
  return channelWords[channel].words
}

/** Units that a column of this channel may be written in; none for step numbers and columns that are left aside. */
export function unitChoices(channel: ChannelName | null): readonly string[] {
  if (channel === null || channel === 'step') return []
  const dimension: Dimension = channel === 'time' ? 'time' : channelWords[channel].dimension
  return [...unitsFor(dimension)]
}
