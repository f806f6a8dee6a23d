import { deviationsOf } from './deviations.ts'

/** Shares of the sum of squares that are left without the two largest and without the two smallest values. */
export interface GrubbsPair {
  readonly high: number
  readonly low: number
  readonly highest: readonly [number, number]
  readonly lowest: readonly [number, number]
}

/** Grubbs' statistics for two outlying values on one side (Grubbs 1950; ISO 5725-2:2019, 8.3.5). Ones where all values are equal. */
export function grubbsPair(values: readonly number[]): GrubbsPair {
  if (!(values.length >= 4)) {
    throw new RangeError(`Grubbs' test of two values needs four or more, got ${values.length}`)
  }
  const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b])
  const last = order.length - 1
  const all = squares(values)
  const left = (kept: readonly number[]): number => (all > 0 ? squares(kept.map((i) => values[i])) / all : 1)
  return {
    high: left(order.slice(0, -2)),
    low: left(order.slice(2)),
    highest: [order[last - 1], order[last]],
    lowest: [order[0], order[1]],
  }
}

const squares = (values: readonly number[]): number =>
  deviationsOf(values).deviations.reduce((sum, d) => sum + d * d, 0)

/** Value under which a pair is an outlier at 1 % or 5 %, both sides together. Undefined under four and over thirty values. */
export function grubbsPairCritical(count: number, significance: 0.01 | 0.05): number | undefined {
  return table.get(count)?.[significance === 0.01 ? 0 : 1]
}

/**
 * 1 % and 5 %. From 4 to 12, 15, 20 and 30: ISO 5725-2:2019, table 5. The others: a million seeded draws of normal values for
 * each count, of which those at counts in the standard's table agree with it to 0.001.
 */
const table: ReadonlyMap<number, readonly [number, number]> = new Map([
  [4, [0.0, 0.0002]],
  [5, [0.0018, 0.009]],
  [6, [0.0116, 0.0349]],
  [7, [0.0308, 0.0708]],
  [8, [0.0563, 0.1101]],
  [9, [0.0851, 0.1492]],
  [10, [0.115, 0.1864]],
  [11, [0.1448, 0.2213]],
  [12, [0.1738, 0.2537]],
  [13, [0.2021, 0.2837]],
  [14, [0.2275, 0.3111]],
  [15, [0.253, 0.3367]],
  [16, [0.277, 0.3601]],
  [17, [0.2999, 0.3832]],
  [18, [0.3192, 0.4023]],
  [19, [0.3386, 0.4218]],
  [20, [0.3585, 0.4391]],
  [21, [0.3762, 0.4553]],
  [22, [0.3927, 0.4712]],
  [23, [0.4088, 0.486]],
  [24, [0.4235, 0.4994]],
  [25, [0.438, 0.5123]],
  [26, [0.4513, 0.5246]],
  [27, [0.4634, 0.536]],
  [28, [0.4753, 0.5467]],
  [29, [0.4876, 0.5576]],
  [30, [0.4985, 0.5672]],
])
