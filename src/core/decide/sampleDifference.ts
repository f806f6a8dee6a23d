import { percentileOfSorted } from '../numeric/index.ts'
import { studentTCdf, studentTQuantile } from '../stats/index.ts'
import type { MetrePerSecond, SampleDifference } from '../terms/index.ts'
import type { CompareOptions } from './decideDefaults.ts'
import { differenceWords } from './differenceWords.ts'
import { inEffect, inMargin } from './scale.ts'
import type { SharedLeft } from './sharedLeft.ts'
import { stretchesOf } from './stretchesOf.ts'

/** The difference of two means over the speeds in the scale of the comparison, ready to be judged. */
export interface PairScatter {
  readonly first: string
  readonly second: string
  readonly speeds: readonly MetrePerSecond[]
  /** Second less first. */
  readonly difference: readonly number[]
  /** From the scatter between replicates. */
  readonly standardError: readonly number[]
  /** For a single speed. */
  readonly degreesOfFreedom: readonly number[]
  /** Largest |t| that chance brings, in rising order, and the share of them that a band may leave out. */
  readonly draws: Float64Array
  readonly share: number
  /** In the scale of the comparison. */
  readonly shared: SharedLeft
}

/** Normal quantiles of a shared error: it is one and the same at all speeds, so it needs no allowance for their number. */
const sharedFactor = { both: 1.959964, one: 1.644854 } as const

/** Judges a pair at all speeds at once, at each speed alone, and against the margin. Named effects come beside. */
export function sampleDifference(
  pair: PairScatter,
  { scale, margin }: CompareOptions,
): Omit<SampleDifference, 'named'> {
  const { first, second, speeds, difference, standardError, degreesOfFreedom, draws, shared } = pair
  const factor = percentileOfSorted(draws, 1 - pair.share)
  const width = (i: number, random: number, common: number): number =>
    Math.hypot(random * standardError[i], common * shared.uncertainty[i])
  const half = speeds.map((_, i) => width(i, factor, sharedFactor.both))
  const alone = degreesOfFreedom.map((nu) => studentTQuantile(0.975, nu))
  const halfAlone = speeds.map((_, i) => width(i, alone[i], sharedFactor.both))
  const effect = (values: readonly number[]): number[] => values.map((value) => inEffect(value, scale))
  const [low, high] = [-1, 1].map((sign) => effect(difference.map((d, i) => d + sign * half[i])))
  const bound = inMargin(margin, scale)
  const value = effect(difference)
  const stretches = stretchesOf({
    ...{ speeds, value, low, high },
    lowMargin: inEffect(-bound, scale),
    highMargin: inEffect(bound, scale),
  })
  const same = sameEverywhere(pair, bound)
  return {
    ...{ first, second, value, low, high },
    lowAlone: effect(difference.map((d, i) => d - halfAlone[i])),
    highAlone: effect(difference.map((d, i) => d + halfAlone[i])),
    factor,
    factorAlone: Math.max(...alone),
    degreesOfFreedom: Math.min(...degreesOfFreedom),
    p: chanceOf(Math.max(...difference.map((d, i) => (half[i] > 0 ? (Math.abs(d) / half[i]) * factor : 0))), pair),
    cancelled: shared.cancelled,
    notCancelled: shared.notCancelled,
    ...{ stretches, same },
    sentence: differenceWords({ first, second, stretches, same, scale, margin }),
  }
}

/** Share of draws that reach what was seen, the seen one counted in; times the number of pairs that share the allowance. */
function chanceOf(seen: number, { draws, share }: PairScatter): number {
  const reaching = draws.reduce((count, draw) => count + (draw >= seen ? 1 : 0), 0)
  return Math.min(1, ((reaching + 1) / (draws.length + 1)) * (0.05 / share))
}

/**
 * Same within the margin everywhere: each speed must pass two one-sided tests at 5 %. As all must pass, their number needs no
 * allowance (Berger 1982, Technometrics 24:295).
 */
function sameEverywhere(
  { difference, standardError, degreesOfFreedom, shared }: PairScatter,
  bound: number,
): SampleDifference['same'] {
  const p = difference.map((d, i) => {
    const t = studentTQuantile(0.95, degreesOfFreedom[i])
    const error = Math.hypot(standardError[i], (sharedFactor.one * shared.uncertainty[i]) / t)
    if (!(error > 0)) return Math.abs(d) < bound ? 0 : 1
    return studentTCdf((Math.abs(d) - bound) / error, degreesOfFreedom[i])
  })
  const most = Math.max(...p)
  return { everywhere: most <= 0.05, p: most }
}
