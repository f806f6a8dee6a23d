import { done, failed, type MetrePerSecond, type Outcome, type Problem, type Removal } from '../terms/index.ts'
import type { Replicate } from './replicate.ts'
import { type CurveOverSpeed, curveThrough } from './replicateCurve.ts'

/** A replicate with its curve; `removed` says who took it out and why. */
export interface JudgedReplicate {
  readonly replicate: Replicate
  readonly curve: CurveOverSpeed
  readonly removed: Removal | null
}

/** The replicates of a comparison, sample after sample in the order in which they were first named. */
export interface ReplicateSet {
  readonly samples: readonly { readonly name: string; readonly replicates: readonly JudgedReplicate[] }[]
  /** Speeds that all replicates that count have in common. */
  readonly slowest: MetrePerSecond
  readonly fastest: MetrePerSecond
}

/** Speeds of records that were driven at one speed differ by less than this. */
const oneSpeed = 1.02

/** Sorts replicates into samples. Problems: removals that name nothing or nobody, records without points, no common speed. */
export function replicateSet(replicates: readonly Replicate[], removals: readonly Removal[]): Outcome<ReplicateSet> {
  const problems = [...removalProblems(replicates, removals), ...replicates.filter(isEmpty).map(withoutPoints)]
  if (replicates.length === 0) problems.push(nothing)
  if (problems.length > 0) return failed(...problems)
  const judged = replicates.map((replicate): JudgedReplicate => {
    const removed = removals.find(({ record }) => record === replicate.record) ?? null
    return { replicate, curve: curveThrough(replicate.points), removed }
  })
  const names = [...new Set(replicates.map(({ sample }) => sample))]
  const samples = names.map((name) => ({
    name,
    replicates: judged.filter(({ replicate }) => replicate.sample === name),
  }))
  const emptied = samples.filter((sample) => sample.replicates.every(({ removed }) => removed !== null))
  if (emptied.length > 0) return failed(...emptied.map(({ name }) => withoutReplicates(name)))
  const used = judged.filter(({ removed }) => removed === null)
  const slowest = Math.max(...used.map(({ curve }) => curve.slowest))
  const fastest = Math.min(...used.map(({ curve }) => curve.fastest))
  if (slowest > fastest * oneSpeed) return failed(noCommonSpeed(used))
  return done({ samples, slowest: Math.min(slowest, fastest), fastest: Math.max(Math.min(slowest, fastest), fastest) })
}

const isEmpty = ({ points }: Replicate): boolean => points.length === 0

function removalProblems(replicates: readonly Replicate[], removals: readonly Removal[]): Problem[] {
  return removals.flatMap(({ record, by, why }): Problem[] => {
    if (!replicates.some((replicate) => replicate.record === record)) {
      return [
        {
          kind: 'removalUnknown',
          class: 'wrongUse',
          place: { name: record },
          what: 'No record of this comparison bears this name, so it cannot be taken out.',
          mend: `Name one of ${replicates.map((replicate) => replicate.record).join(', ')}.`,
        },
      ]
    }
    if (by.trim() !== '' && why.trim() !== '') return []
    return [
      {
        kind: 'removalUnsigned',
        class: 'wrongUse',
        place: { name: record },
        what: 'A replicate is taken out by a person with a reason alone.',
        mend: 'Say who and why.',
      },
    ]
  })
}

const nothing: Problem = {
  kind: 'nothingToCompare',
  class: 'wrongUse',
  place: {},
  what: 'There is no record to compare.',
  mend: 'Name the records of at least one sample.',
}

const withoutPoints = ({ name }: Replicate): Problem => ({
  kind: 'noTrustedPoint',
  class: 'badInput',
  place: { file: name },
  what: 'This record has no point that may be used.',
  mend: 'Leave it away, or see with "kufe reduce" what its remarks say.',
})

const withoutReplicates = (sample: string): Problem => ({
  kind: 'sampleEmptied',
  class: 'wrongUse',
  place: { name: sample },
  what: 'All replicates of this sample were taken out.',
  mend: 'Leave one in, or leave the sample away.',
})

function noCommonSpeed(used: readonly JudgedReplicate[]): Problem {
  const slow = used.toSorted((a, b) => b.curve.slowest - a.curve.slowest)[0]
  const fast = used.toSorted((a, b) => a.curve.fastest - b.curve.fastest)[0]
  return {
    kind: 'noCommonSpeed',
    class: 'badInput',
    place: { file: slow.replicate.name },
    what: `The records have no speed in common: ${slow.replicate.name} begins at ${slow.curve.slowest.toPrecision(3)} m/s, and ${fast.replicate.name} ends at ${fast.curve.fastest.toPrecision(3)} m/s.`,
    mend: 'Compare records of one run sheet, or leave one of the two away.',
  }
}
