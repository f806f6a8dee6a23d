import { printQuantity } from '../../core/quantity/index.ts'
import { stretchKinds } from '../../core/terms/index.ts'
import { channelWords } from './channelWords.ts'
import { shareOf, stretchWords } from './stretchMarks.ts'
import type { StripFigureData } from './stripData.ts'

/** The strip in words, for people who hear it. */
export function stripInWords({ time, channels, stretches }: StripFigureData): string {
  const whole = time[1] - time[0]
  const steps = new Set(stretches.map(({ step }) => step)).size
  const lengths = stretchKinds.flatMap((kind) => {
    const own = stretches.filter((one) => one.kind === kind)
    if (own.length === 0) return []
    return [`${stretchWords[kind]} ${shareOf(own.reduce((sum, { from, to }) => sum + to - from, 0) / whole)}`]
  })
  return [
    `Raw channels over ${printQuantity(whole, 'time', { digits: 4 })}, ${steps} ${steps === 1 ? 'step' : 'steps'}.`,
    lengths.length === 0 ? '' : `Of the time: ${lengths.join(', ')}.`,
    ...channels.map(rangeInWords),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function rangeInWords({ name, columns }: StripFigureData['channels'][number]): string {
  if (name === 'time' || name === 'step') return ''
  const { words, dimension } = channelWords[name]
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let column = 0; column < columns.min.length; column++) {
    if (columns.min[column] < low) low = columns.min[column]
    if (columns.max[column] > high) high = columns.max[column]
  }
  if (!Number.isFinite(low) || !Number.isFinite(high)) return `${words}: no number.`
  const print = (value: number): string => printQuantity(value, dimension, { digits: 3 })
  return `${words} from ${print(low)} to ${print(high)}.`
}
