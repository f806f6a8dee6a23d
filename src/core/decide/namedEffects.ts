import { holm, studentTQuantile, summary } from '../stats/index.ts'
import { pooledDifference, tTest, welchDifference } from '../stats/judging/index.ts'
import type { MetrePerSecond, NamedEffect } from '../terms/index.ts'
import type { CompareOptions } from './decideDefaults.ts'
import { inEffect, inScale } from './scale.ts'
import { sharedLeft } from './sharedLeft.ts'
import type { JudgedReplicate } from './usedReplicates.ts'

/** Two samples by the replicates that count. */
export type ReplicatePair = readonly [readonly JudgedReplicate[], readonly JudgedReplicate[]]

/**
 * Each pair at each speed that was named, by a t test for itself (Student's, or Welch's where each sample has its own scatter), and
 * with Holm's allowance for all that were asked. Pairs without two replicates on either side have none. What two rigs or
 * fixtures do not share widens the error.
 */
export function namedEffects(
  pairs: readonly ReplicatePair[],
  speeds: readonly MetrePerSecond[],
  { scale, scatter }: CompareOptions,
): NamedEffect[][] {
  const found = pairs.map((pair) =>
    pair.every((side) => side.length >= 2) ? speeds.map((speed) => effectAt(pair, speed, { scale, scatter })) : [],
  )
  const adjusted = holm(found.flat().map(({ p }) => p))
  let place = 0
  return found.map((effects) => effects.map((effect) => ({ ...effect, adjusted: adjusted[place++] })))
}

function effectAt(
  pair: ReplicatePair,
  slidingSpeed: MetrePerSecond,
  { scale, scatter }: Pick<CompareOptions, 'scale' | 'scatter'>,
): Omit<NamedEffect, 'adjusted'> {
  const [first, second] = pair.map((side) => summary(side.map(({ curve }) => inScale(curve, [slidingSpeed], scale)[0])))
  const by = scatter === 'pooled' ? pooledDifference : welchDifference
  const { difference, standardError: random, degreesOfFreedom } = by(second, first)
  const size = scale === 'ratio' ? 1 : (first.mean + second.mean) / 2
  const standardError = Math.hypot(random, size * sharedLeft(pair, [slidingSpeed]).uncertainty[0])
  const half = studentTQuantile(0.975, degreesOfFreedom) * standardError
  return {
    slidingSpeed,
    value: inEffect(difference, scale),
    low: inEffect(difference - half, scale),
    high: inEffect(difference + half, scale),
    ...tTest({ difference, standardError, degreesOfFreedom }),
    degreesOfFreedom,
  }
}
