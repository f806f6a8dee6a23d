import { type ReactNode, useMemo } from 'react'
import { fillFromTables, planOf } from '../../../core/plan/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import type { BodiesAnswer } from '../../../server/contract/index.ts'
import { useKept } from '../../api/kept.ts'
import { studyPaper, usePaper } from '../../api/usePaper.ts'
import type { DrawerProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import type { QuestionPaper } from '../../question/questionPaper.ts'
import { useOwnThings } from '../../question/useOwnThings.ts'
import { useQuestion } from '../../question/useQuestion.ts'

/** How often balls and plates were used and how far they slid; beside them when the plan of this study retires a set. */
export function BodiesPart({ study }: { readonly study: DrawerProps['study'] }): ReactNode {
  const { value } = useKept<BodiesAnswer>('/api/lab/bodies')
  if (value === undefined) return <Waiting what="Counting the uses" />
  return study === undefined ? <Counts bodies={value} bears={null} /> : <WithPlan bodies={value} study={study.id} />
}

function WithPlan({ bodies, study }: { readonly bodies: BodiesAnswer; readonly study: string }): ReactNode {
  const { question } = useQuestion(usePaper<QuestionPaper>(studyPaper(study, 'question')))
  const own = useOwnThings()
  const bears = useMemo(() => {
    const filled = fillFromTables(question, own)
    const plan = filled.ok ? planOf(filled.value.question) : filled
    return plan.ok ? plan.value.wear.runsPerBallSet : null
  }, [question, own])
  return <Counts bodies={bodies} bears={bears} />
}

function Counts({
  bodies: { ballSets, plates },
  bears,
}: {
  readonly bodies: BodiesAnswer
  readonly bears: number | null
}): ReactNode {
  return (
    <>
      {bears !== null && (
        <p>
          By the wear budget of this study’s plan a set of balls bears {bears} {bears === 1 ? 'record' : 'records'},
          then it is retired.
        </p>
      )}
      <table className="drawer-table">
        <caption>Sets of balls</caption>
        <thead>
          <tr>
            <th scope="col">set</th>
            <th scope="col">records</th>
            <th scope="col">slid</th>
            <th scope="col">last used</th>
          </tr>
        </thead>
        <tbody>
          {ballSets.map(({ name, material, records, distance, last }) => (
            <tr key={name}>
              <td>
                <b>{name}</b> <span className="quiet">{material}</span>
                {bears !== null && records >= bears && <b className="retire"> retire it</b>}
              </td>
              <td>{records}</td>
              <td>{printQuantity(distance, 'length', { digits: 2 })}</td>
              <td>{last ?? '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {ballSets.length === 0 && (
        <p className="quiet">No record says yet which set of balls it used; say it when a file is kept.</p>
      )}
      <table className="drawer-table">
        <caption>Plates and their tracks</caption>
        <thead>
          <tr>
            <th scope="col">plate</th>
            <th scope="col">track</th>
            <th scope="col">records</th>
            <th scope="col">slid</th>
          </tr>
        </thead>
        <tbody>
          {plates.flatMap(({ sample, name, material, tracks }) =>
            tracks.map(({ radius, records, distance }) => (
              <tr key={`${sample} ${radius}`}>
                <td>
                  <b>{name}</b> <span className="quiet">{material}</span>
                </td>
                <td>{radius === null ? '–' : printQuantity(radius, 'length', { digits: 3 })}</td>
                <td>{records}</td>
                <td>{printQuantity(distance, 'length', { digits: 2 })}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
      {plates.length === 0 && <p className="quiet">No plate yet.</p>}
    </>
  )
}
