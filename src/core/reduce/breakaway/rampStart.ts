import type { Bounded } from '../../terms/index.ts'
import { type CorrelatedProfile, correlatedProfile } from '../profile/correlatedProfile.ts'
import type { StartRows } from './startRows.ts'
import { type TorqueLine, torqueLine } from './torqueLine.ts'

/** What a torque ramp shows: whether, when and at which torque it broke away, and the angle before by cause. SI. */
export interface RampFound {
  readonly moved: boolean
  /** Time at which sustained motion began. */
  readonly onset: Bounded | null
  /** Torque there, with what both the time and the torque itself leave open. */
  readonly torque: Bounded | null
  readonly torqueRate: number
  readonly heldTorque: number
  readonly stiffness: Bounded | null
  readonly elastic: number
  readonly creep: number
  readonly angleNoise: number
  readonly threshold: number
  /** Angle beyond wind-up and creep at the end of the ramp. */
  readonly slid: number
  readonly rowsBefore: number
}

/** Rows after the first in motion that are looked at in any case. */
const fewestAfter = 2
const fewestBefore = 10

/** How many standard deviations of the angle's noise a motion has to exceed, whatever was asked for. */
const noiseFactor = 6

/** A motion has to make its model so much more likely (AICc). */
const clearGain = 10

/** @param motion angle that has to be exceeded before it counts as motion, rad */
export function rampStart(rows: StartRows, motion: number): RampFound {
  const last = rows.time.length - 1
  const knee = kneeOf(rows)
  const before = fitBefore(rows, knee - Math.max(3, Math.ceil(0.02 * last)))
  const deviation = before?.fit.deviation ?? Number.NaN
  const threshold = Math.max(motion, noiseFactor * deviation)
  const past = before === undefined ? rows.angle.map(() => 0) : excessFrom(rows, before)
  const slid = Math.min(past[last], past[last - 1])
  const common = { angleNoise: deviation, threshold, slid }
  const seen = slid > threshold ? seenFrom(past, noiseFactor * deviation) : last
  const found =
    seen < last && before !== undefined
      ? onsetOf(rows, { seen, creeping: before.creeping, past, deviation })
      : undefined
  if (found === undefined || !found.clear) {
    const line = torqueLine(rows, last)
    const heldTorque = line.at(rows.time[last])
    const twist = twistOf(fitBefore(rows, last, true), heldTorque)
    return {
      moved: false,
      onset: null,
      torque: null,
      heldTorque,
      rowsBefore: last,
      torqueRate: line.rate,
      ...common,
      ...twist,
    }
  }
  const { onset } = found
  const rowsBefore = Math.max(
    fewestBefore + 1,
    rows.time.findIndex((t) => t >= (onset.low ?? onset.value)),
  )
  const line = torqueLine(rows, Math.max(fewestBefore, rowsBefore - 1))
  const torque = torqueAt(line, onset)
  return {
    moved: true,
    onset,
    torque,
    heldTorque: torque.value,
    rowsBefore,
    torqueRate: line.rate,
    ...common,
    ...twistOf(fitBefore(rows, rowsBefore - 1, true) ?? before, torque.value),
  }
}

/** The row at which angle bends away most from the straight line between first and last row. */
function kneeOf({ time, angle }: StartRows): number {
  const last = time.length - 1
  const risen = (i: number): number =>
    (time[i] - time[0]) / (time[last] - time[0]) - (angle[i] - angle[0]) / (angle[last] - angle[0] || 1)
  let knee = 0
  for (let i = 1; i <= last; i++) if (risen(i) > risen(knee)) knee = i
  return Math.max(Math.min(fewestBefore + 4, last), knee)
}

/** First row from which on the angle stays beyond twist and creep. */
function seenFrom(past: Float64Array, limit: number): number {
  let row = past.length
  while (row > 0 && past[row - 1] > limit) row--
  return row
}

interface Before {
  readonly fit: CorrelatedProfile
  readonly creeping: boolean
  readonly scale: number
  readonly at: (time: number) => number
}

/** Angle against torque before motion: a twist that is proportional to it, and creep where it is clear or asked for. */
function fitBefore(rows: StartRows, to: number, withCreep = false): Before | undefined {
  const count = Math.min(to + 1, rows.time.length)
  if (count < fewestBefore) return undefined
  const line = torqueLine(rows, count - 1)
  const scale = Math.max(Math.abs(line.at(rows.time[count - 1])), Number.MIN_VALUE)
  const share = Float64Array.from(rows.time.subarray(0, count), (t) => line.at(t) / scale)
  const response = rows.angle.slice(0, count)
  const fitWith = (creeping: boolean) =>
    correlatedProfile({ response, columns: () => columnsBefore(share, creeping), places: [[]] })
  const curved = fitWith(true)
  const creep = curved?.profile.combination(() => [0, 0, 1])
  const creeping = withCreep || (creep !== undefined && (creep.low ?? 0) > 0)
  const fit = creeping ? curved : fitWith(false)
  if (fit === undefined) return undefined
  const { coefficients } = fit.profile.best
  const at = (time: number): number => {
    const x = line.at(time) / scale
    return coefficients[0] + coefficients[1] * x + (creeping ? coefficients[2] * x * x : 0)
  }
  return { fit, creeping, scale, at }
}

const columnsBefore = (share: Float64Array, creeping: boolean): Float64Array[] => {
  const ones = new Float64Array(share.length).fill(1)
  return creeping ? [ones, share, share.map((x) => x * x)] : [ones, share]
}

const excessFrom = ({ time, angle }: StartRows, { at }: Before): Float64Array => angle.map((a, i) => a - at(time[i]))

function twistOf(before: Before | undefined, torque: number): Pick<RampFound, 'stiffness' | 'elastic' | 'creep'> {
  if (before === undefined) return { stiffness: null, elastic: 0, creep: 0 }
  const { coefficients } = before.fit.profile.best
  const twist = before.fit.profile.combination(() => (before.creeping ? [0, 1, 0] : [0, 1]))
  const x = torque / before.scale
  const over = (angle: number | null): number | null => (angle === null || !(angle > 0) ? null : before.scale / angle)
  const stiffness =
    twist.value > 0 ? { value: before.scale / twist.value, low: over(twist.high), high: over(twist.low) } : null
  return { stiffness, elastic: coefficients[1] * x, creep: before.creeping ? coefficients[2] * x * x : 0 }
}

/** Powers of time by which the slide may run away: from a limited speed (1) over a steady acceleration (2) to a growing one (3). */
const runaways = { coarse: [1, 2, 3], fine: [1, 1.4, 1.8, 2.2, 2.6, 3] } as const

/** Noise deviations beyond which the slide's own law matters more than its noise. */
const farthest = 30

/** The change-point in the angle: twist and creep before, a power of the time since after it. */
function onsetOf(
  rows: StartRows,
  { seen, creeping, past, deviation }: { seen: number; creeping: boolean; past: Float64Array; deviation: number },
): { onset: Bounded; clear: boolean } | undefined {
  const window = windowOf(past, seen, farthest * deviation)
  const line = torqueLine(rows, Math.max(fewestBefore, seen - 2))
  const time = rows.time.subarray(0, window)
  const scale = Math.abs(line.at(time[window - 1])) || 1
  const share = Float64Array.from(time, (t) => line.at(t) / scale)
  const span = time[window - 1] - time[0]
  const base = columnsBefore(share, creeping)
  const response = rows.angle.slice(0, window)
  const interval = span / (window - 1)
  const first = Math.max(fewestBefore - 1, Math.floor(0.3 * window))
  const place = (row: number): number => time[0] + row * interval
  const grid = (from: number, to: number, count: number): number[] =>
    Array.from({ length: count }, (_, i) => place(from + ((to - from) * i) / (count - 1)))
  const withPowers = (onsets: readonly number[], powers: readonly number[]): number[][] =>
    onsets.flatMap((t) => powers.map((p) => [t, p]))
  const moving = correlatedProfile({
    response,
    columns: ([onset, power]) => [...base, time.map((t) => Math.max(0, (t - onset) / span) ** power)],
    places: withPowers(grid(first, seen, Math.min(80, seen - first + 2)), runaways.coarse),
    finer: ([onset], zoom) => {
      const row = (onset - time[0]) / interval
      const reach = zoom * Math.max(4, 0.06 * (seen - first))
      return withPowers(grid(Math.max(first, row - reach), Math.min(seen, row + reach), 33), runaways.fine)
    },
  })
  const resting = correlatedProfile({ response, columns: () => base, places: [[]] })
  if (moving === undefined || resting === undefined) return undefined
  const gain = resting.deviance - moving.deviance - 2 * 3
  return { onset: withSampling(moving.profile.held(0), [place(seen - 1), place(seen)]), clear: gain > clearGain }
}

/**
 * A slide that is over within a few rows leaves its onset anywhere between the last row at rest and the first in motion,
 * whatever law its few rows seem to follow: 95 % of that interval belong to the answer.
 */
function withSampling({ value, low, high }: Bounded, [rest, motion]: readonly [number, number]): Bounded {
  const edge = 0.025 * (motion - rest)
  const sudden = motion - value < 2 * (motion - rest)
  const least = sudden ? Math.min(low ?? rest, rest + edge) : (low ?? rest)
  const most = sudden ? Math.max(high ?? motion, motion - edge) : (high ?? motion)
  return { value: Math.min(Math.max(value, least), most), low: least, high: most }
}

/** Rows up to a little past the first in motion: later its own law matters more than noise. */
function windowOf(past: Float64Array, seen: number, most: number): number {
  let row = seen + fewestAfter
  while (row < past.length - 1 && past[row] < most) row++
  return Math.min(row + 1, past.length)
}

/** Torque at the onset: what the time leaves open and what the torque's own noise does, taken together. */
function torqueAt(line: TorqueLine, { value, low, high }: Bounded): Bounded {
  const torque = line.at(value)
  const noise = 1.96 * line.uncertainty(value)
  const side = (end: number | null): number | null =>
    end === null ? null : Math.hypot(line.slope(value) * (end - value), noise)
  const [down, up] = [side(low), side(high)]
  return { value: torque, low: down === null ? null : torque - down, high: up === null ? null : torque + up }
}
