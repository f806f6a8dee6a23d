import type { Second } from '../../terms/index.ts'
import type { TurningPoint } from './turningPoints.ts'

/** One rise between a trough and the next peak, seen as loading of the spring along a line of the common slope. */
export interface Rise {
  /** Rows of trough and peak. */
  readonly trough: number
  readonly peak: number
  /** Mean place and value of the rows on the line. */
  readonly time: Second
  readonly level: number
  readonly rows: number
}

/** Rises that follow one another, with the slope that they share. */
export interface SlipCycles {
  readonly rises: readonly Rise[]
  /** Friction per second while it rises. */
  readonly slope: number
  readonly slopeUncertainty: number
  /** Variance of one row about its line. */
  readonly noise: number
  /** Rows of each fall, from a peak to the trough after it. */
  readonly falls: readonly number[]
  /** Seconds from one fall to the next. */
  readonly periods: readonly Second[]
  /** Friction that each fall sheds, taken between the lines before and after it at the same time, less what is loaded meanwhile. */
  readonly drops: readonly number[]
}

/**
 * Puts lines through the rises. Turning points themselves and the last part of a resolved fall are left out of the lines, as
 * they may belong to the slip. A peak or trough that is read from single samples would be too high by noise and too low by sampling; the
 * distance of two lines is neither.
 */
export function slipCycles(
  rows: { readonly time: Float64Array; readonly friction: Float64Array },
  turns: readonly TurningPoint[],
): SlipCycles | undefined {
  const { time, friction } = rows
  const first = turns.findIndex(({ kind }) => kind === 'trough')
  if (first < 0) return undefined
  const pairs: { trough: number; peak: number }[] = []
  for (let at = first; at + 1 < turns.length; at += 2) pairs.push({ trough: turns[at].row, peak: turns[at + 1].row })
  if (pairs.length < 2) return undefined
  const falls = pairs.slice(1).map(({ trough }, i) => trough - pairs[i].peak)
  const usual = falls.reduce((a, b) => a + b, 0) / falls.length
  // The top of a slip that takes several samples is round.
  const spared = usual > 2 ? 1 + Math.ceil(usual / 4) : 1
  const lines = pairs.map((pair) => lineOf(pair, { time, friction, spared }))
  const across = lines.reduce((sum, { tt }) => sum + tt, 0)
  if (!(across > 0)) return undefined
  const slope = lines.reduce((sum, { ty }) => sum + ty, 0) / across
  const squares = lines.reduce((sum, { tt, ty, yy }) => sum + Math.max(0, yy - 2 * slope * ty + slope ** 2 * tt), 0)
  const freedom = lines.reduce((sum, { rise }) => sum + Math.max(0, rise.rows - 1), 0) - 1
  const noise = freedom > 0 ? squares / freedom : 0
  const rises = lines.map(({ rise }) => rise)
  const middle = (i: number): number => (time[rises[i].peak] + time[rises[i + 1].trough]) / 2
  const centres = falls.map((_, i) => middle(i))
  return {
    rises,
    slope,
    slopeUncertainty: Math.sqrt(noise / across),
    noise,
    falls,
    periods: centres.slice(1).map((at, i) => at - centres[i]),
    drops: falls.map((_, i) => {
      const [before, after] = [rises[i], rises[i + 1]]
      return before.level - after.level + slope * (after.time - before.time)
    }),
  }
}

interface Line {
  readonly rise: Rise
  /** Sums of squares and products about the line's middle. */
  readonly tt: number
  readonly ty: number
  readonly yy: number
}

function lineOf(
  { trough, peak }: { trough: number; peak: number },
  { time, friction, spared }: { time: Float64Array; friction: Float64Array; spared: number },
): Line {
  const from = peak - trough > spared + 1 ? trough + 1 : trough
  const to = Math.max(from + 1, peak - spared + 1)
  let rows = 0
  let t = 0
  let y = 0
  for (let i = from; i < to; i++) {
    rows++
    t += time[i]
    y += friction[i]
  }
  const rise = { trough, peak, time: t / rows, level: y / rows, rows }
  let tt = 0
  let ty = 0
  let yy = 0
  for (let i = from; i < to; i++) {
    tt += (time[i] - rise.time) ** 2
    ty += (time[i] - rise.time) * (friction[i] - rise.level)
    yy += (friction[i] - rise.level) ** 2
  }
  return { rise, tt, ty, yy }
}
