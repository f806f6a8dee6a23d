import { type MetrePerSecond, type SharedSource, sharedSources } from '../terms/index.ts'
import { sharedOf } from './sampleCurve.ts'
import type { JudgedReplicate } from './usedReplicates.ts'

/** Sources that lie in the rig; the others lie in the fixture and its mounting. */
const ofRig: readonly SharedSource[] = ['torqueScale', 'forceScale', 'forceZero', 'torqueBlank']

/** What of the shared uncertainty is left in a comparison of two samples. */
export interface SharedLeft {
  readonly cancelled: readonly SharedSource[]
  readonly notCancelled: readonly SharedSource[]
  /** Standard uncertainty of ln of the ratio that is left at each speed. */
  readonly uncertainty: readonly number[]
}

/**
 * One rig errs by the same share in both samples, and so does one fixture: in the ratio it cancels. What was measured on two rigs
 * or with two fixtures has the sources of both, independent of each other.
 */
export function sharedLeft(
  [first, second]: readonly [readonly JudgedReplicate[], readonly JudgedReplicate[]],
  speeds: readonly MetrePerSecond[],
): SharedLeft {
  const all = [...first, ...second].map(({ replicate }) => replicate)
  const oneRig = new Set(all.map(({ rig }) => rig)).size === 1
  const oneFixture = new Set(all.map(({ fixture }) => fixture)).size === 1
  const present = sharedSources.filter((source) =>
    all.some(({ points }) => points.some(({ shared }) => (shared[source] ?? 0) > 0)),
  )
  const cancels = (source: SharedSource): boolean => (ofRig.includes(source) ? oneRig : oneRig && oneFixture)
  const notCancelled = present.filter((source) => !cancels(source))
  return {
    cancelled: present.filter(cancels),
    notCancelled,
    uncertainty: speeds.map((speed) =>
      Math.hypot(
        ...notCancelled.flatMap((source) => [sharedOf(first, source, speed), sharedOf(second, source, speed)]),
      ),
    ),
  }
}
