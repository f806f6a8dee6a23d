import { curveScatter } from '../stats/judging/index.ts'
import {
  type Comparison,
  done,
  failed,
  type MetrePerSecond,
  type Outcome,
  type Problem,
  type Removal,
} from '../terms/index.ts'
import { comparisonWords } from './comparisonWords.ts'
import { type CompareOptions, compareDefaults } from './decideDefaults.ts'
import { namedEffects } from './namedEffects.ts'
import { methodWords, pairScatters } from './pairScatters.ts'
import { rankingOf } from './rankingOf.ts'
import { repeatabilityOf } from './repeatabilityOf.ts'
import type { Replicate } from './replicate.ts'
import { sampleCurve } from './sampleCurve.ts'
import { sampleDifference } from './sampleDifference.ts'
import { inScale } from './scale.ts'
import { scatterCheck } from './scatterCheck.ts'
import { speedGrid } from './speedGrid.ts'
import { spokenSpan, spokenSpeed } from './speedWords.ts'
import { type JudgedReplicate, type ReplicateSet, replicateSet } from './usedReplicates.ts'

/** What is asked of replicates beside their curves. */
export interface CompareAsk {
  readonly options?: Partial<CompareOptions>
  /** Speeds at which effects are told for themselves; the whole decades of the range if nothing is said. */
  readonly at?: readonly MetrePerSecond[]
  /** Ranks by the friction at this speed; by the mean over the range if nothing is said. */
  readonly rankAt?: MetrePerSecond
  readonly removals?: readonly Removal[]
}

/**
 * Holds samples against each other, or tells the repeatability of one. The replicate is the unit: its curve is one observation, and
 * all intervals come from the scatter between replicates. Equal input and seed give equal output.
 */
export function compareSamples(replicates: readonly Replicate[], ask: CompareAsk = {}): Outcome<Comparison> {
  const options = { ...compareDefaults, ...ask.options }
  const set = replicateSet(replicates, ask.removals ?? [])
  if (!set.ok) return set
  const { slowest, fastest } = set.value
  const outside = [...(ask.at ?? []), ...(ask.rankAt === undefined ? [] : [ask.rankAt])].filter(
    (speed) => !(speed >= slowest && speed <= fastest),
  )
  if (outside.length > 0) return failed(...outside.map((speed) => speedOutside(speed, set.value)))
  return done(compared(set.value, { ...ask, options }))
}

function compared(
  set: ReplicateSet,
  { options, at, rankAt }: CompareAsk & { readonly options: CompareOptions },
): Comparison {
  const speeds = speedGrid(set.slowest, set.fastest)
  const samples = set.samples.map(({ name, replicates }) => sampleCurve({ name, replicates, speeds }, options))
  const used = set.samples.map(({ name, replicates }) => ({
    name,
    used: replicates.filter(({ removed }) => removed === null),
  }))
  const pairs = pairScatters(used, { speeds, options })
  const named = namedEffects(
    pairs.map(({ sides }) => sides),
    at ?? wholeDecades(set.slowest, set.fastest),
    options,
  )
  const differences = pairs.map(({ scatter }, i) => ({ ...sampleDifference(scatter, options), named: named[i] }))
  const ln = used.map(({ used: counted }) => counted.map(({ curve }) => inScale(curve, speeds, 'ratio')))
  const told = {
    ...{ scale: options.scale, margin: options.margin, speeds },
    believable: believable(used.flatMap((one) => one.used)),
    samples,
    repeatability: ln.some((curves) => curves.length > 1) ? repeatabilityOf(curveScatter(ln)) : null,
    scatter: scatterCheck(
      used.map(({ name, used: counted }) => ({
        name,
        curves: counted.map(({ curve }) => inScale(curve, speeds, options.scale)),
      })),
    ),
    differences,
    ranking: rankingOf({ samples: used, speeds: rankAt === undefined ? speeds : [rankAt] }, options),
    method: methodWords(differences, { speeds, options }),
  }
  return { ...told, sentences: comparisonWords(told) }
}

/** 1, 10, 100 … mm/s as far as they lie inside; the middle where none does. */
function wholeDecades(slowest: MetrePerSecond, fastest: MetrePerSecond): number[] {
  const first = Math.ceil(Math.log10(slowest) - 1e-9)
  const last = Math.floor(Math.log10(fastest) + 1e-9)
  const inside = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => 10 ** (first + i)).filter(
    (speed) => speed >= slowest && speed <= fastest,
  )
  return inside.length > 0 ? inside : [Math.min(fastest, Math.max(slowest, Math.sqrt(slowest * fastest)))]
}

function believable(used: readonly JudgedReplicate[]): Comparison['believable'] {
  const windows = used.map(({ replicate }) => replicate.window)
  if (windows.some(({ low, high }) => low === null || high === null)) return null
  const low = Math.max(...windows.map((window) => window.low ?? 0))
  const high = Math.min(...windows.map((window) => window.high ?? 0))
  return low < high ? { low, high } : null
}

const speedOutside = (speed: MetrePerSecond, { slowest, fastest }: ReplicateSet): Problem => ({
  kind: 'speedOutside',
  class: 'wrongUse',
  place: { name: 'at' },
  what: `The records do not all reach ${spokenSpeed(speed)}.`,
  mend: `Name a speed ${spokenSpan(slowest, fastest)}.`,
})
