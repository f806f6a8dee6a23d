import { lazy, type ReactNode, Suspense } from 'react'
import { PaperLine } from '../../api/PaperLine.tsx'
import { patiently } from '../../api/patiently.ts'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { QuestionQuantity } from '../../question/QuestionQuantity.tsx'
import { QuestionWording } from '../../question/QuestionWording.tsx'
import { type QuestionHold, useQuestion } from '../../question/useQuestion.ts'
import { Choice } from '../../sentence/Choice.tsx'
import { usePlan } from '../plan/usePlan.ts'
import { AskSentence } from './AskSentence.tsx'

const Answer = lazy(patiently(() => import('./Answer.tsx')))

/** What is to be known, in a sentence or two; beside it what the answer will be and what it costs. */
export default function Ask({ question: paper }: StationProps): ReactNode {
  const hold = useQuestion(paper)
  const plan = usePlan(hold)
  if (paper.phase === 'reading') return <Waiting what="Reading the question" />
  return (
    <div className="two-columns">
      <div>
        {paper.content === null && (
          <p className="notice">
            A new study: what stands in lighter ink is a default that nobody has confirmed. Click a word or a number to
            make it yours. <Link to={{ search: { tour: 1 } }}>Show me around in two minutes</Link>
          </p>
        )}
        <AskSentence hold={hold} />
        <ScatterSentence hold={hold} />
        <p className="aside-note">
          Above every page it is called: <QuestionWording hold={hold} path="title" name="title of the study" />
        </p>
        <PaperLine paper={paper} what="the question" />
        <p className="onward">
          <Link to={{ station: 'plan' }}>On to the plan</Link>
        </p>
      </div>
      <Suspense fallback={<Waiting what="Working out what it will answer" />}>
        <Answer plan={plan} />
      </Suspense>
    </div>
  )
}

const origins = [
  { value: 'assumed', words: 'assumed' },
  { value: 'measured', words: 'measured' },
] as const

function ScatterSentence({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const kind = hold.question.ask.kind ?? 'rank'
  const quantity = (path: string): ReactNode => <QuestionQuantity hold={hold} path={`deciding.${path}`} />
  return (
    <p className="say">
      Replicates scatter by {quantity('repeatability')}{' '}
      <span className="together">
        (
        <Choice
          name="where the scatter comes from"
          value={hold.question.deciding.repeatabilityFrom}
          options={origins}
          assumed={hold.assumed('deciding.repeatabilityFrom')}
          change={(from) => hold.setText('deciding.repeatabilityFrom', from)}
        />
        ).
      </span>{' '}
      {kind !== 'regimes' && kind !== 'last' && (
        <>
          What is there shall be seen in {quantity('power')} of all cases, what is not in {quantity('significance')}
          {kind !== 'limit' && <>; within {quantity('margin')} two samples count as the same</>}.{' '}
        </>
      )}
      A day holds {quantity('runsPerDay')} runs, with{' '}
      <QuestionWording hold={hold} path="deciding.checkStandard" name="check standard" /> as check standard.
    </p>
  )
}
