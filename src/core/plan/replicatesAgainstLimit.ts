import { findRoot } from '../numeric/index.ts'
import { noncentralTCdf, studentTQuantile } from '../stats/index.ts'
import type { ReplicateAnswer, ReplicateQuestion } from './replicates.ts'

/** Most replicates that are searched; nobody mounts more. */
const mostReplicates = 1e5

/**
 * Replicates of one sample with which a one-sided t test shows that its friction keeps a limit, where the truth lies `difference`
 * inside it: noncentral t with n − 1 degrees of freedom. Normal scatter. Throws RangeError for a question that none can answer.
 */
export function replicatesAgainstLimit({
  difference,
  repeatability,
  power,
  significance,
}: Omit<ReplicateQuestion, 'sides'>): ReplicateAnswer {
  for (const [name, value] of Object.entries({ difference, repeatability })) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY))
      throw new RangeError(`${name} must be over zero, got ${value}`)
  }
  if (!(power > 0 && power < 1)) throw new RangeError(`power must lie between 0 and 1, got ${power}`)
  if (!(significance > 0 && significance < 0.5)) {
    throw new RangeError(`significance must lie between 0 and 0.5, got ${significance}`)
  }
  const powerOf = (n: number): number => {
    const noncentrality = (difference / repeatability) * Math.sqrt(n)
    const critical = studentTQuantile(1 - significance, n - 1)
    // Beyond this the test cannot miss, and the integral has nothing left to add.
    if (noncentrality > 60 && noncentrality > 10 * critical) return 1
    return 1 - noncentralTCdf(critical, { degreesOfFreedom: n - 1, noncentrality })
  }
  const lack = (n: number): number => powerOf(n) - power
  if (lack(2) >= 0) return { exact: 2, replicates: 2, power: powerOf(2) }
  let high = 4
  while (lack(high) < 0) {
    high *= 2
    if (high > mostReplicates) throw new RangeError(`difference must be large enough to be seen, got ${difference}`)
  }
  const { at } = findRoot(lack, [high / 2, high], { tolerance: 1e-9 })
  const replicates = Math.ceil(at - 1e-9)
  return { exact: at, replicates, power: powerOf(replicates) }
}
