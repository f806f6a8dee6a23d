import { fisherFQuantile } from '../stats/index.ts'
import type { Interval, Radian } from '../terms/index.ts'
import type { TurnBand } from './turnBand.ts'

const turn = 2 * Math.PI

/** A place of the turn at which something grew. */
export interface TurnSpot {
  readonly from: Radian
  readonly to: Radian
  /** Place of the largest change, its change and the half-width of the band there. */
  readonly at: Radian
  readonly change: number
  readonly band: number
  /** Mean change over the spot along the turns. */
  readonly course: readonly { readonly turn: number; readonly change: number }[]
  /** Turn at which it begins to grow, by a broken line; null where no broken line fits better than a level one. */
  readonly onset: Interval | null
}

/** What a spot is looked for in. */
interface Levelled {
  readonly levelled: readonly Float64Array[]
  /** The early profile in the same scale. */
  readonly base: Float64Array
  readonly turns: readonly number[]
}

type Found = TurnBand & { readonly angles: readonly Radian[] }

/** The places around the one that stands furthest out of the band, as long as they stand out to the same side. */
export function turnSpot(found: Found, { levelled, base, turns }: Levelled): TurnSpot | null {
  const { local, low, high, angles } = found
  const columns = local.length
  const beyond = local.map((_, c) => Math.max(low[c], -high[c]))
  const top = beyond.reduce((best, value, c) => (value > beyond[best] || Number.isNaN(beyond[best]) ? c : best), 0)
  if (!(beyond[top] > 0)) return null
  const side = Math.sign(local[top])
  const out = (c: number): boolean => {
    const at = ((c % columns) + columns) % columns
    return side > 0 ? low[at] > 0 : high[at] < 0
  }
  let from = top
  let to = top
  while (to - from < columns - 1 && out(from - 1)) from--
  while (to - from < columns - 1 && out(to + 1)) to++
  const inside = Array.from({ length: to - from + 1 }, (_, i) => (((from + i) % columns) + columns) % columns)
  const step = turn / columns
  const course = levelled.flatMap((row, i) => {
    const values = inside.map((c) => row[c] - base[c]).filter((value) => !Number.isNaN(value))
    // The spot is passed at its own place within a turn.
    const passed = (turns[i] + turns[i + 1] - 1) / 2 + angles[top] / turn
    return values.length === 0 ? [] : [{ turn: passed, change: values.reduce((a, b) => a + b, 0) / values.length }]
  })
  return {
    from: from * step,
    to: (to + 1) * step,
    at: angles[top],
    change: local[top],
    band: (high[top] - low[top]) / 2,
    course: thinned(course),
    onset: onsetOf(thinned(course)),
  }
}

const mostPlaces = 100

function thinned(course: TurnSpot['course']): TurnSpot['course'] {
  const size = Math.ceil(course.length / mostPlaces)
  if (size <= 1) return course
  return Array.from({ length: Math.floor(course.length / size) }, (_, i) => {
    const part = course.slice(i * size, (i + 1) * size)
    return {
      turn: part.reduce((sum, { turn: at }) => sum + at, 0) / size,
      change: part.reduce((sum, { change }) => sum + change, 0) / size,
    }
  })
}

/** Level, then a straight rise: the break with the least squares, and all breaks that F does not refuse at 95 %. */
function onsetOf(course: TurnSpot['course']): Interval | null {
  const count = course.length
  if (count < 8) return null
  const fits = course.slice(0, -2).map(({ turn: at }) => ({ at, squares: brokenLine(course, at) }))
  const best = fits.reduce((least, one) => (one.squares < least.squares ? one : least))
  const mean = course.reduce((sum, { change }) => sum + change, 0) / count
  const flat = course.reduce((sum, { change }) => sum + (change - mean) ** 2, 0)
  const freedom = count - 3
  if (!((flat - best.squares) / 2 > (best.squares / freedom) * fisherFQuantile(0.95, [2, freedom]))) {
    return null
  }
  // Neighbouring turns that lean the same way count for less.
  const limit = best.squares * (1 + (memory(course, best.at) * fisherFQuantile(0.95, [1, freedom])) / freedom)
  const held = fits.filter(({ squares }) => squares <= limit).map(({ at }) => at)
  const spacing = (course[count - 1].turn - course[0].turn) / (count - 1)
  return { value: best.at, low: Math.min(...held) - spacing / 2, high: Math.max(...held) + spacing / 2 }
}

/** (1 + ρ)/(1 − ρ) of what a broken line leaves over; 1 without memory. */
function memory(course: TurnSpot['course'], at: number): number {
  const left = leftOver(course, at)
  let same = 0
  let next = 0
  for (let i = 0; i < left.length; i++) {
    same += left[i] ** 2
    if (i > 0) next += left[i] * left[i - 1]
  }
  // Fitting three numbers makes neighbours look less alike than they are.
  const correlation = Math.min(0.9, Math.max(0, next / same + 3 / left.length))
  return (1 + correlation) / (1 - correlation)
}

/** Least squares of a + b·max(0, turn − at). */
const brokenLine = (course: TurnSpot['course'], at: number): number =>
  leftOver(course, at).reduce((sum, one) => sum + one ** 2, 0)

function leftOver(course: TurnSpot['course'], at: number): readonly number[] {
  const count = course.length
  const x = course.map(({ turn: place }) => Math.max(0, place - at))
  const meanX = x.reduce((a, b) => a + b, 0) / count
  const meanY = course.reduce((sum, { change }) => sum + change, 0) / count
  let xx = 0
  let xy = 0
  for (let i = 0; i < count; i++) {
    xx += (x[i] - meanX) ** 2
    xy += (x[i] - meanX) * (course[i].change - meanY)
  }
  const slope = xx > 0 ? xy / xx : 0
  return course.map(({ change }, i) => change - meanY - slope * (x[i] - meanX))
}
