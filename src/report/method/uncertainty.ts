import { type Setup, type SharedSource, sharedSources } from '../../core/terms/index.ts'
import { causeWords } from '../words/causeWords.ts'
import { listed, percent } from '../words/printed.ts'
import type { Done } from './done.ts'

/** Own and shared part, what each is made from, and which of them the intervals hold. */
export function uncertainty({ setup, reduction }: Done): string {
  const { points } = reduction
  if (!points.some(({ friction }) => friction !== null)) return ''
  const causes = sharedSources.filter((source) => points.some(({ shared }) => (shared[source] ?? 0) > 0))
  const own =
    'The intervals of the points are 95 % intervals of their own part alone: what differs from step to step. They follow from the noise of the rows and from the turn that was not completed, by Student’s t with effective degrees of freedom (Welch–Satterthwaite; JCGM 100:2008, G.4), and not from the scatter over the root of the number of rows, which correlated rows would make too small.'
  if (causes.length === 0) {
    return `${own} The setup states no accuracy of the rig, so what all points have in common is not in this report.`
  }
  return `${own} What all points have in common (${listed(causes.map((cause) => causeInWords(cause, setup)))}) is kept apart as the shared part, combined as the root of the sum of squares (JCGM 100:2008, 5.1): it moves all points together, does not shrink when points are averaged, and cancels where two samples of one rig and fixture are compared.`
}

/** Scale errors are stated as half-widths of rectangular distributions. */
function causeInWords(cause: SharedSource, { rig }: Setup): string {
  if (cause === 'torqueScale') return `${causeWords[cause]} (rectangular, ±${percent(rig.torque.scaleAccuracy)})`
  if (cause === 'forceScale') return `${causeWords[cause]} (rectangular, ±${percent(rig.axialForce.scaleAccuracy)})`
  return causeWords[cause]
}
