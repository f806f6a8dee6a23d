import { lazy, type ReactNode, Suspense } from 'react'
import { PaperLine } from '../../api/PaperLine.tsx'
import { patiently } from '../../api/patiently.ts'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { useQuestion } from '../../question/useQuestion.ts'
import { MoreSentences } from './MoreSentences.tsx'
import { PlanParagraph } from './PlanParagraph.tsx'
import { usePlan } from './usePlan.ts'

const Consequences = lazy(patiently(() => import('./Consequences.tsx')))
const PlanPictures = lazy(patiently(() => import('./PlanPictures.tsx')))

/** What is mounted, pressed and slid, as a paragraph; beside it pictures that follow. */
export default function Plan({ question: paper }: StationProps): ReactNode {
  const hold = useQuestion(paper)
  const plan = usePlan(hold)
  if (paper.phase === 'reading') return <Waiting what="Reading the question" />
  return (
    <div className="two-columns plan-page">
      <div className="column">
        {paper.content === null && (
          <p className="notice">
            Nothing of this is yours yet: what stands in lighter ink is a default. Change a quantity, and the plan
            begins.
          </p>
        )}
        <PlanParagraph hold={hold} live={plan.live} />
        <Troubles hold={hold} plan={plan} />
        <PaperLine paper={paper} what="the question" />
        <MoreSentences hold={hold} live={plan.live} />
        <Suspense fallback={null}>
          <Consequences plan={plan} />
        </Suspense>
        <p className="onward">
          <Link to={{ station: 'rig-up' }}>On to the run sheet</Link>
        </p>
      </div>
      <Suspense fallback={<Waiting what="Drawing" />}>
        <PlanPictures hold={hold} plan={plan} />
      </Suspense>
    </div>
  )
}

/** Why no plan can be made of it, where that is so; the pictures keep their last frame. */
function Troubles({
  hold,
  plan,
}: {
  readonly hold: ReturnType<typeof useQuestion>
  readonly plan: ReturnType<typeof usePlan>
}): ReactNode {
  const all = [
    ...hold.troubles.map(({ path, what, mend }) => ({ key: path, text: `${path}: ${what} ${mend}` })),
    ...plan.problems.map(({ what, mend }) => ({ key: what, text: `${what} ${mend}` })),
  ]
  if (all.length === 0) return null
  return (
    <div className="refused" role="alert">
      {all.map(({ key, text }) => (
        <p key={key}>{text}</p>
      ))}
    </div>
  )
}
