import type { Box } from '../sheet.ts'
import type { StripChannel } from './stripData.ts'

/** Columns without a number that a line runs across, as a multiple of what lies between the others. */
const bridged = 4

/**
 * One channel as the text of a path: an upright stroke from smallest to largest in every column, joined to its
 * neighbours, begun from whichever end lies nearer. The line breaks where numbers are missing for longer than usual.
 */
export function tracePath(
  { columns }: StripChannel,
  { left, right }: Pick<Box, 'left' | 'right'>,
  y: (value: number) => number,
): string {
  const count = columns.min.length
  const width = (right - left) / count
  const longest = bridged * usualStep(columns.min)
  let path = ''
  let before = Number.NEGATIVE_INFINITY
  let end = 0
  for (let column = 0; column < count; column++) {
    const min = columns.min[column]
    const max = columns.max[column]
    if (Number.isNaN(min) || Number.isNaN(max)) continue
    const low = tenth(y(min))
    const high = tenth(y(max))
    const begin = Math.abs(end - low) < Math.abs(end - high) ? low : high
    end = begin === low ? high : low
    path += `${column - before > longest ? 'M' : 'L'}${tenth(left + (column + 0.5) * width)} ${begin}`
    if (end !== begin) path += `V${end}`
    before = column
  }
  return path
}

/** A tenth of a pixel is what a line of one pixel can show; `toFixed` would cost ten times as long. */
const tenth = (value: number): number => Math.round(value * 10) / 10

/** Columns from one that holds a number to the next, on average. */
function usualStep(values: ArrayLike<number>): number {
  let filled = 0
  for (let column = 0; column < values.length; column++) if (!Number.isNaN(values[column])) filled++
  return filled === 0 ? 1 : values.length / filled
}
