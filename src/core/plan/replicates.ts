import { findRoot } from '../numeric/index.ts'
import { noncentralTCdf, studentTQuantile } from '../stats/index.ts'
import type { Ratio } from '../terms/index.ts'

/** What is to be told apart, and how surely. `difference` and `repeatability` in the same unit, usually shares of the mean. */
export interface ReplicateQuestion {
  readonly difference: Ratio
  /** Standard deviation between true replicates: fresh mounting, fresh surfaces. */
  readonly repeatability: Ratio
  /** Chance to see the difference if it is there. */
  readonly power: Ratio
  /** Chance to see one that is not there. */
  readonly significance: Ratio
  readonly sides?: 1 | 2
}

/** Replicates for each of two samples. */
export interface ReplicateAnswer {
  /** As a real number, where the power is met exactly; 2 where less would do, as one replicate tells no scatter. */
  readonly exact: number
  readonly replicates: number
  /** Power that this whole number has. */
  readonly power: Ratio
}

/** Most replicates that are searched; nobody mounts more. */
const mostReplicates = 1e5

/** Power of the two-sample t test with `n` replicates each, by the noncentral t with 2n − 2 degrees of freedom. */
export function powerOfTTest(n: number, question: Omit<ReplicateQuestion, 'power'>): Ratio {
  checkQuestion(question)
  if (!(n > 1 && n < Number.POSITIVE_INFINITY)) throw new RangeError(`replicates must be more than 1, got ${n}`)
  const { difference, repeatability, significance, sides = 2 } = question
  const degreesOfFreedom = 2 * n - 2
  const noncentrality = (difference / repeatability) * Math.sqrt(n / 2)
  const critical = studentTQuantile(1 - significance / sides, degreesOfFreedom)
  // Beyond this the test cannot miss, and the integral has nothing left to add.
  if (noncentrality > 60 && noncentrality > 10 * critical) return 1
  const upper = 1 - noncentralTCdf(critical, { degreesOfFreedom, noncentrality })
  return sides === 1 ? upper : upper + noncentralTCdf(-critical, { degreesOfFreedom, noncentrality })
}

/**
 * Replicates per sample with which a two-sample t test sees a difference. Equal groups, normal scatter. Throws RangeError for
 * a question that none can answer (more than 100,000).
 */
export function replicatesNeeded(question: ReplicateQuestion): ReplicateAnswer {
  checkQuestion(question)
  const { power } = question
  if (!(power > 0 && power < 1)) throw new RangeError(`power must lie between 0 and 1, got ${power}`)
  const lack = (n: number): number => powerOfTTest(n, question) - power
  if (lack(2) >= 0) return { exact: 2, replicates: 2, power: powerOfTTest(2, question) }
  let high = 4
  while (lack(high) < 0) {
    high *= 2
    if (high > mostReplicates)
      throw new RangeError(`difference must be large enough to be seen, got ${question.difference}`)
  }
  const { at } = findRoot(lack, [high / 2, high], { tolerance: 1e-9 })
  const replicates = Math.ceil(at - 1e-9)
  return { exact: at, replicates, power: powerOfTTest(replicates, question) }
}

/** Smallest difference that `n` replicates of each sample see with the power asked for, in the unit of the repeatability. */
export function smallestDifference(n: number, question: Omit<ReplicateQuestion, 'difference'>): Ratio {
  const { repeatability, power } = question
  if (!(power > 0 && power < 1)) throw new RangeError(`power must lie between 0 and 1, got ${power}`)
  const lack = (difference: number): number => powerOfTTest(n, { ...question, difference }) - power
  let high = repeatability
  while (lack(high) < 0) high *= 2
  return findRoot(lack, [high * 1e-6, high], { tolerance: 1e-12 }).at
}

/** Throws RangeError for a question without scatter, without a difference or with an impossible significance. */
function checkQuestion({ difference, repeatability, significance }: Omit<ReplicateQuestion, 'power'>): void {
  if (!(difference > 0 && difference < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`difference must be more than zero and finite, got ${difference}`)
  }
  if (!(repeatability > 0 && repeatability < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`repeatability must be more than zero and finite, got ${repeatability}`)
  }
  if (!(significance > 0 && significance < 0.5)) {
    throw new RangeError(`significance must lie between 0 and 0.5, got ${significance}`)
  }
}
