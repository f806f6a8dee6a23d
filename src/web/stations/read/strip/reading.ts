import { printQuantity } from '../../../../core/quantity/index.ts'
import type { RecordStretch } from '../../../../core/terms/index.ts'
import { channelWords, type DrawnChannel, stretchWords } from '../../../../figure/index.ts'
import type { Piece } from './envelopes.ts'

/** What the strip holds at one time, in words: the same for eye and ear. */
export function readingAt(
  time: number,
  {
    pieces,
    names,
    stretches,
  }: { pieces: readonly Piece[]; names: readonly DrawnChannel[]; stretches: readonly RecordStretch[] },
): string {
  const stretch = stretches.find(({ from, to }) => time >= from && time < to)
  const values = names.flatMap((name) => {
    const value = valueAt(time, name, pieces)
    return value === undefined ? [] : [`${channelWords[name].words} ${value}`]
  })
  const at = `${printQuantity(time, 'time', { digits: 5, unit: 's' })}`
  const where = stretch === undefined ? [] : [`step ${stretch.step}, ${stretchWords[stretch.kind]}`]
  return [at, ...where, ...values].join(' · ')
}

function valueAt(time: number, name: DrawnChannel, pieces: readonly Piece[]): string | undefined {
  const piece = pieces.find(({ part }) => time >= part.from && time <= part.to)
  const channel = piece?.tile.channels.get(name)
  if (piece === undefined || channel === undefined) return undefined
  const entry = nearest(piece.tile.at, time)
  const [low, high] = [channel.min[entry], channel.max[entry]]
  if (!Number.isFinite(low) || !Number.isFinite(high)) return undefined
  return printQuantity((low + high) / 2, channelWords[name].dimension, { digits: 3 }).replace(/^-/, '−')
}

function nearest(at: Float64Array, time: number): number {
  let low = 0
  let high = at.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (at[middle] < time) low = middle + 1
    else high = middle
  }
  return low > 0 && time - at[low - 1] < at[low] - time ? low - 1 : low
}
