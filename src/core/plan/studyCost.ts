import type { Ratio, Second } from '../terms/index.ts'
import type { Plan } from './planOf.ts'
import { type ReplicateAnswer, smallestDifference } from './replicates.ts'
import { replicatesAgainstLimit } from './replicatesAgainstLimit.ts'

/** What a study costs for the kind of answer that is wanted. */
export interface StudyCost {
  /** Of each sample; null where no sensible number answers. */
  readonly replicates: number | null
  /** How surely they tell; null for kinds that tell no difference. */
  readonly answer: ReplicateAnswer | null
  /** Records with those of the check standard. */
  readonly runs: number
  readonly days: number
  /** At the rig, all records together. */
  readonly time: Second
}

/** Fewest replicates: less than three tell no scatter. Common practice, no source. */
const fewest = 3

/** Replicates, runs, days and hours of a plan; `each` is the time of one record with all its parts. */
export function studyCost({ question, decision }: Plan, each: Second): StudyCost {
  if (!(each >= 0 && each < Number.POSITIVE_INFINITY))
    throw new RangeError(`time of a record must be finite, got ${each} s`)
  const { deciding, ask } = question
  const kind = ask.kind ?? 'rank'
  if (kind === 'rank' || kind === 'feel') {
    const { order, days, replicates: answer } = decision
    const replicates = answer === null || order.length === 0 ? null : Math.max(fewest, answer.replicates)
    return { replicates, answer, runs: order.length, days, time: order.length * each }
  }
  const answer = kind === 'limit' ? againstLimit(question) : null
  const replicates = kind === 'limit' && answer === null ? null : Math.max(fewest, answer?.replicates ?? fewest)
  const runs = (replicates ?? 0) * deciding.samples.length
  return { replicates, answer, runs, days: Math.ceil(runs / deciding.runsPerDay), time: runs * each }
}

/** A question that no number of replicates answers throws; here that is an answer. */
function againstLimit({ deciding }: Plan['question']): ReplicateAnswer | null {
  try {
    return replicatesAgainstLimit(deciding)
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

/** Smallest differences that few to many replicates of each of two samples see. */
export const differencesSeen = (
  { deciding: { repeatability, power, significance } }: Plan['question'],
  counts: readonly number[] = [2, 3, 4, 5, 6, 7, 8, 10, 12, 15],
): readonly { readonly replicates: number; readonly difference: Ratio }[] =>
  counts.map((replicates) => ({
    replicates,
    difference: smallestDifference(replicates, { repeatability, power, significance }),
  }))
