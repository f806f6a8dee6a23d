import { smallestDifference } from '../plan/index.ts'
import type { Comparison } from '../terms/index.ts'
import { spokenShare, spokenSpan } from './speedWords.ts'

type Told = Omit<Comparison, 'sentences'>

/** Fewer replicates than this are no result. Common practice, no source. */
const fewestReplicates = 3

/** The answer in sentences, the verdict first, then what it rests on and what must be known to use it. */
export function comparisonWords(told: Told): string[] {
  return [
    ...verdicts(told),
    ...(told.ranking !== null && told.samples.length > 2 ? [told.ranking.sentence] : []),
    ...repeatabilityWords(told),
    ...(told.scatter?.sentence == null ? [] : [told.scatter.sentence]),
    ...sharedWords(told),
    ...fewWords(told),
    ...flagWords(told),
    ...removedWords(told),
    ...beliefWords(told),
  ]
}

function verdicts({ differences, samples }: Told): string[] {
  if (differences.length > 0) return differences.map(({ sentence }) => sentence)
  if (samples.length < 2) return []
  return ['No sample has two replicates, so nobody can tell a difference from the scatter between mountings.']
}

function repeatabilityWords({ repeatability, samples, differences }: Told): string[] {
  if (repeatability === null) return samples.length < 2 ? ['One replicate tells nothing about scatter.'] : []
  const { pooled, low, high, limit } = repeatability
  const of = samples.length < 2 ? ` of ${samples[0].sample}` : ''
  const scatter = `Replicates${of} scatter by ${spokenShare(pooled)} (95 % interval ${spokenShare(low)} to ${spokenShare(high)}); two results that differ by less than ${spokenShare(limit)} are not different.`
  const counts = samples.map(({ used }) => used)
  if (differences.length === 0 || !counts.every((count) => count === counts[0] && count > 1)) return [scatter]
  const seen = smallestDifference(counts[0], { repeatability: pooled, power: 0.8, significance: 0.05 })
  return [
    scatter,
    `${counts[0]} replicates of each see a difference of ${spokenShare(seen)} at one speed in four cases of five.`,
  ]
}

function sharedWords({ differences }: Told): string[] {
  const left = differences.filter(({ notCancelled }) => notCancelled.length > 0)
  if (left.length > 0)
    return ['Rig or fixture differ between samples, so what either shares does not cancel: it is in the band.']
  return differences.some(({ cancelled }) => cancelled.length > 0)
    ? ['One rig and one fixture: what all records share cancels from the difference.']
    : []
}

const fewWords = ({ samples }: Told): string[] =>
  samples
    .filter(({ used }) => used < fewestReplicates)
    .map(({ sample, used }) =>
      used === 1
        ? `${sample} has one replicate: its scatter is taken from the others, and nothing is known of its own.`
        : `${sample} has ${used} replicates: fewer than three are no result.`,
    )

const flagWords = ({ samples }: Told): string[] =>
  samples.flatMap(({ replicates }) =>
    replicates.flatMap(({ flags }) => flags.filter(({ test }) => test !== 'mandelH').map(({ sentence }) => sentence)),
  )

const removedWords = ({ samples }: Told): string[] =>
  samples.flatMap(({ replicates }) =>
    replicates.flatMap(({ name, removed }) =>
      removed === null ? [] : [`${name} was taken out by ${removed.by}: ${removed.why}.`],
    ),
  )

function beliefWords({ believable, speeds }: Told): string[] {
  if (believable === null) return ['At no speed may all records be believed; see their windows.']
  const [slowest, fastest] = [speeds[0], speeds[speeds.length - 1]]
  if (believable.low <= slowest * 1.02 && believable.high >= fastest / 1.02) return []
  return [
    `All records may be believed ${spokenSpan(believable.low, believable.high)} alone; take what is said beyond with care.`,
  ]
}
