import { type ReactNode, useMemo } from 'react'
import { fillFromTables, heldAgainstPlan, type PlanAssumption, planOf } from '../../../../core/plan/index.ts'
import { printQuantity } from '../../../../core/quantity/index.ts'
import type { Point } from '../../../../core/terms/index.ts'
import type { PaperHold } from '../../../api/usePaper.ts'
import { Link } from '../../../frame/Link.tsx'
import type { QuestionPaper } from '../../../question/questionPaper.ts'
import { useOwnThings } from '../../../question/useOwnThings.ts'
import { useQuestion } from '../../../question/useQuestion.ts'

interface PlanPartProps {
  readonly paper: PaperHold<QuestionPaper>
  readonly points: readonly Point[]
  readonly record: string
}

/** What the record gave against what the plan promised: the uncertainty of each point, and which assumption failed. */
export default function PlanPart({ paper, points, record }: PlanPartProps): ReactNode {
  const { question } = useQuestion(paper)
  const own = useOwnThings()
  const held = useMemo(() => {
    const filled = fillFromTables(question, own)
    const plan = filled.ok ? planOf(filled.value.question) : filled
    return plan.ok ? heldAgainstPlan(plan.value, { points }) : undefined
  }, [question, own, points])
  if (held === undefined || held.points.length === 0) return null
  return (
    <section className="held" aria-labelledby="held">
      <h3 id="held">Against the plan</h3>
      <p>{held.sentence}</p>
      <table>
        <caption className="unseen">Uncertainty of each point, promised and obtained</caption>
        <thead>
          <tr>
            <th scope="col">step</th>
            <th scope="col">speed</th>
            <th scope="col">promised</th>
            <th scope="col">obtained</th>
            <th scope="col">not as planned</th>
          </tr>
        </thead>
        <tbody>
          {held.points.map(({ slidingSpeed, predicted, obtained, failed }) => {
            const step = stepAt(points, slidingSpeed)
            return (
              <tr key={`${step} ${slidingSpeed}`}>
                <td>{step === undefined ? '–' : <Link to={{ rest: [record, step] }}>{step}</Link>}</td>
                <td>{printQuantity(slidingSpeed, 'velocity', { digits: 2 })}</td>
                <td>{percent(predicted.total)}</td>
                <td>{obtained === null ? 'no value' : percent(obtained.total)}</td>
                <td>{failed.map((one) => assumptionWords[one]).join(', ')}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <p className="quiet">Relative standard uncertainty of friction, own and shared parts together.</p>
    </section>
  )
}

const assumptionWords: Readonly<Record<PlanAssumption, string>> = {
  noise: 'noise',
  friction: 'friction',
  axialForce: 'load',
  turns: 'turns',
  steady: 'steadiness',
  trusted: 'no trusted value',
  speeds: 'speed',
}

/** Step of the record nearest to a planned speed. */
function stepAt(points: readonly Point[], speed: number): number | undefined {
  const apart = (point: Point): number => Math.abs(Math.log(point.slidingSpeed / speed))
  const near = points.filter((point) => apart(point) < 0.03)
  return near.sort((a, b) => apart(a) - apart(b))[0]?.step
}

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`
