import type { Box } from '../sheet.ts'
import type { StripChannel } from './stripData.ts'

/** Columns without a number that a line runs across, as a multiple of what lies between the others. */
const bridged = 4

/**
 * One channel as the text of a path in tenths of a pixel: an upright stroke from smallest to largest in every column,
 * joined to its neighbours, begun from whichever end lies nearer. The line breaks where numbers are missing for longer than usual.
 * Whole numbers from place to place are made ten times as fast as decimals, and a long record has ten thousand of them.
 */
export function tracePath(
  { columns }: StripChannel,
  { left, right }: Pick<Box, 'left' | 'right'>,
  y: (value: number) => number,
): string {
  const count = columns.min.length
  const width = (10 * (right - left)) / count
  const first = 10 * left + width / 2
  const longest = bridged * usualStep(columns.min)
  let path = ''
  let before = Number.NEGATIVE_INFINITY
  let x = 0
  let end = 0
  for (let column = 0; column < count; column++) {
    const min = columns.min[column]
    const max = columns.max[column]
    if (Number.isNaN(min) || Number.isNaN(max)) continue
    const low = Math.round(10 * y(min))
    const high = min === max ? low : Math.round(10 * y(max))
    const begin = Math.abs(end - low) < Math.abs(end - high) ? low : high
    const at = Math.round(first + column * width)
    path += column - before > longest ? `M${at} ${begin}` : `l${at - x} ${begin - end}`
    end = begin === low ? high : low
    if (end !== begin) path += `v${end - begin}`
    before = column
    x = at
  }
  return path
}

/** Columns from one that holds a number to the next, on average. */
function usualStep(values: ArrayLike<number>): number {
  let filled = 0
  for (let column = 0; column < values.length; column++) if (!Number.isNaN(values[column])) filled++
  return filled === 0 ? 1 : values.length / filled
}
