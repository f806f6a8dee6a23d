import { type ReplicateAnswer, replicatesNeeded, smallestDifference } from '../plan/index.ts'
import { chiSquaredQuantile } from '../stats/index.ts'
import { mixedModel, type ScatterIntervals, varianceIntervals } from '../stats/judging/index.ts'
import { done, failed, type MetrePerSecond, type Outcome, type Ratio } from '../terms/index.ts'
import type { Replicate } from './replicate.ts'
import { curveThrough } from './replicateCurve.ts'
import { speedGrid } from './speedGrid.ts'
import { usableCauses } from './usableCauses.ts'

/** What is to be seen, and how surely. */
export interface HistoryAsk {
  /** A speed; the mean over all speeds that a sample's records share where it is null. */
  readonly at: MetrePerSecond | null
  /** Share of friction. */
  readonly difference: Ratio
  readonly power: Ratio
  readonly significance: Ratio
}

/** Replicates of each sample for one way of running them. */
export interface HistoryDesign {
  readonly name: 'fresh' | 'blocked'
  readonly words: string
  /** Standard deviation that counts, and the one that it does not exceed in four labs of five. */
  readonly deviation: Ratio
  readonly cautious: Ratio
  readonly replicates: ReplicateAnswer
  readonly cautiousReplicates: ReplicateAnswer
  /** Differences that 3, 5 and 8 replicates see with the power asked for. */
  readonly sees: readonly { readonly replicates: number; readonly difference: Ratio }[]
}

/** Scatter of a lab's own replicates, and what follows for the next study. */
export interface ScatterHistory {
  readonly samples: readonly { readonly sample: string; readonly replicates: number }[]
  /** As shares of friction. */
  readonly scatter: ScatterIntervals
  /** Causes of which nothing can be said, with the reason. */
  readonly untold: readonly { readonly cause: string; readonly why: string }[]
  readonly end: 'converged' | 'stepLimit'
  readonly designs: readonly HistoryDesign[]
}

/**
 * Splits the scatter between a lab's own replicates, in ln μ about the mean of each sample, into days, operators, ball sets and
 * mountings by restricted maximum likelihood, with the interval of each standard deviation, and says how many replicates see a
 * difference: with everything fresh for each, and with both samples in every block.
 */
export function scatterHistory(replicates: readonly Replicate[], ask: HistoryAsk): Outcome<ScatterHistory> {
  const values = valuesOf(replicates, ask.at)
  const counts = new Map<string, number>()
  for (const { replicate } of values) counts.set(replicate.sample, (counts.get(replicate.sample) ?? 0) + 1)
  const used = values.filter(({ replicate }) => (counts.get(replicate.sample) ?? 0) >= 2)
  const samples = [...counts].filter(([, count]) => count >= 2)
  if (used.length - samples.length < 2) {
    return failed({
      kind: 'tooFewReplicates',
      class: 'badInput',
      place: {},
      what: `Of ${values.length} records, ${used.length} are replicates of ${samples.length} samples: too few to tell a scatter.`,
      mend: 'Add at least two samples with two mountings each, or one with three, that share a speed.',
    })
  }
  const causes = usableCauses(used.map(({ replicate }) => replicate))
  const problem = {
    values: used.map(({ value }) => value),
    design: used.map(({ replicate }) => samples.map(([sample]) => (replicate.sample === sample ? 1 : 0))),
    causes,
  }
  const fit = mixedModel(problem)
  const scatter = varianceIntervals(problem, fit, { residualName: 'mounting' })
  return done({
    samples: samples.map(([sample, count]) => ({ sample, replicates: count })),
    scatter,
    untold: untoldOf(
      used.map(({ replicate }) => replicate),
      causes.map(({ name }) => name),
    ),
    end: fit.end,
    designs: designsOf(scatter, ask),
  })
}

/** ln μ of each replicate at the speed, or its mean over the speeds that all records of its sample share. */
function valuesOf(replicates: readonly Replicate[], at: MetrePerSecond | null) {
  const curves = replicates.map((replicate) => ({ replicate, curve: curveThrough(replicate.points) }))
  return curves.flatMap(({ replicate, curve }) => {
    if (at !== null) {
      const inside = at >= curve.slowest / 1.02 && at <= curve.fastest * 1.02
      return inside ? [{ replicate, value: curve.lnFriction(at) }] : []
    }
    const alike = curves.filter((other) => other.replicate.sample === replicate.sample)
    const slowest = Math.max(...alike.map((other) => other.curve.slowest))
    const fastest = Math.min(...alike.map((other) => other.curve.fastest))
    if (!(fastest >= slowest)) return []
    const speeds = speedGrid(slowest, fastest)
    const value = speeds.reduce((sum, speed) => sum + curve.lnFriction(speed), 0) / speeds.length
    return [{ replicate, value }]
  })
}

const causeNames = [
  ['day', 'day'],
  ['operator', 'operator'],
  ['ballSet', 'ball set'],
] as const

function untoldOf(replicates: readonly Replicate[], told: readonly string[]): ScatterHistory['untold'] {
  return causeNames.flatMap(([key, cause]) => {
    if (told.some((name) => name.includes(cause))) return []
    const known = replicates.map(({ blocks }) => blocks[key])
    if (known.some((value) => value === null)) return [{ cause, why: 'not known for every record' }]
    const levels = new Set(known).size
    if (levels < 2) return [{ cause, why: 'all records have the same' }]
    if (levels === known.length)
      return [{ cause, why: 'every record has another, so it cannot be told from the mounting' }]
    return [{ cause, why: 'it changes with the samples only' }]
  })
}

function designsOf({ parts, total, degreesOfFreedom }: ScatterIntervals, ask: HistoryAsk): readonly HistoryDesign[] {
  const mounting = parts[parts.length - 1]
  const fresh = designOf('fresh', 'each mounted freshly, on any day and with any ball set', {
    deviation: total.deviation,
    cautious: total.deviation * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(0.2, degreesOfFreedom)),
    ask,
  })
  if (parts.length < 2 || !(mounting.deviation > 0)) return [fresh]
  // The profile's upper end lies 1.96 standard errors of ln s off, four labs of five 0.84.
  const spread = mounting.high === null ? 1 : Math.log(mounting.high / mounting.deviation) / 1.96
  const blocked = designOf(
    'blocked',
    'both samples in every block of day, ball set and operator, and compared within it',
    {
      deviation: mounting.deviation,
      cautious: mounting.deviation * Math.exp(0.8416 * spread),
      ask,
    },
  )
  return [fresh, blocked]
}

function designOf(
  name: HistoryDesign['name'],
  words: string,
  { deviation, cautious, ask }: { readonly deviation: Ratio; readonly cautious: Ratio; readonly ask: HistoryAsk },
): HistoryDesign {
  // Scatter was told in ln μ, so the difference is one of logarithms too.
  const difference = Math.log1p(ask.difference)
  const { power, significance } = ask
  const needed = (repeatability: number): ReplicateAnswer =>
    replicatesNeeded({ difference, repeatability, power, significance })
  return {
    ...{ name, words, deviation, cautious },
    replicates: needed(deviation),
    cautiousReplicates: needed(cautious),
    sees: [3, 5, 8].map((replicates) => ({
      replicates,
      difference: Math.expm1(smallestDifference(replicates, { repeatability: deviation, power, significance })),
    })),
  }
}
