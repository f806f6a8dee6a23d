import { type Random, randomFrom } from '../../numeric/index.ts'
import { type RunRuleName, rulesMet } from './runRules.ts'

/** A watch over a process: which patterns alarm, and whether a weighted mean does. */
export interface WatchSetting {
  readonly rules: readonly RunRuleName[]
  readonly ewma?: { readonly weight: number; readonly width: number }
  /** Lasting shift of the mean from the first value on, in standard deviations. */
  readonly shift: number
  /** Values from which centre and σ are estimated beforehand; both are known where left out. */
  readonly baseline?: number
  readonly runs: number
  readonly seed: number
}

/** How long a watch stays silent, as counted. */
export interface RunLength {
  /** Values up to and including the first alarm, on average. */
  readonly mean: number
  readonly standardError: number
  /** Half of the runs alarm within so many. */
  readonly median: number
  /** Runs that were given up after `longest` values; they count as that long. */
  readonly cut: number
}

/** No lab measures a check standard more often. */
const longest = 100_000

/** Average run length of a watch over independent normal values, by simulation. */
export function runLength(setting: WatchSetting): RunLength {
  if (!(Number.isInteger(setting.runs) && setting.runs >= 2)) {
    throw new RangeError(`runs must be a whole number from 2, got ${setting.runs}`)
  }
  const random = randomFrom(setting.seed)
  const lengths = Float64Array.from({ length: setting.runs }, () => oneRun(setting, random)).sort()
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length
  const squares = lengths.reduce((sum, length) => sum + (length - mean) ** 2, 0)
  return {
    mean,
    standardError: Math.sqrt(squares / (lengths.length - 1) / lengths.length),
    median: lengths[lengths.length >> 1],
    cut: lengths.reduce((count, length) => count + (length >= longest ? 1 : 0), 0),
  }
}

/** Rules look back 15 values at most, so a short window that is moved on now and then is enough. */
const back = 15

function oneRun({ rules, ewma, shift, baseline }: WatchSetting, random: Random): number {
  const known = baseline === undefined ? { centre: 0, deviation: 1 } : estimated(baseline, random)
  const window = new Float64Array(256)
  const half = ewma === undefined ? 0 : ewma.width * Math.sqrt(ewma.weight / (2 - ewma.weight))
  let mean = 0
  let at = -1
  for (let length = 1; length < longest; length++) {
    if (++at === window.length) {
      window.copyWithin(0, window.length - back)
      at = back
    }
    window[at] = (random.normal() + shift - known.centre) / known.deviation
    if (rulesMet(window, at, rules).length > 0) return length
    if (ewma === undefined) continue
    mean = ewma.weight * window[at] + (1 - ewma.weight) * mean
    if (Math.abs(mean) > half) return length
  }
  return longest
}

/** Centre and σ as a chart of individuals takes them from its baseline. */
function estimated(count: number, random: Random): { readonly centre: number; readonly deviation: number } {
  let before = random.normal()
  let sum = before
  let ranges = 0
  for (let i = 1; i < count; i++) {
    const value = random.normal()
    sum += value
    ranges += Math.abs(value - before)
    before = value
  }
  return { centre: sum / count, deviation: (ranges / (count - 1) / 2) * Math.sqrt(Math.PI) }
}
