import type { ReactNode } from 'react'
import { studyPaper, usePaper } from '../../api/usePaper.ts'
import { Link } from '../../frame/Link.tsx'
import type { DrawerProps } from '../../frame/stationProps.ts'
import type { QuestionPaper } from '../../question/questionPaper.ts'
import { useQuestion } from '../../question/useQuestion.ts'

/** The sample that is measured again and again to watch the rig, with its records in this study. */
export function StandardsPart({ study }: { readonly study: DrawerProps['study'] }): ReactNode {
  if (study === undefined) return <p>Open a study: each names its own check standard.</p>
  return <OfStudy study={study} />
}

function OfStudy({ study }: { readonly study: NonNullable<DrawerProps['study']> }): ReactNode {
  const { question } = useQuestion(usePaper<QuestionPaper>(studyPaper(study.id, 'question')))
  const name = question.deciding.checkStandard
  if (name === undefined) {
    return (
      <p>
        This study names no check standard. A sample that is measured at the begin and end of each day tells a drift of
        the rig from a difference of the samples:{' '}
        <Link to={{ station: 'ask', search: { lab: null } }}>name one with the question</Link>.
      </p>
    )
  }
  const ids = new Set(study.samples.filter((sample) => sample.name === name || sample.id === name).map(({ id }) => id))
  const records = study.records.filter(({ sample }) => sample !== null && (ids.has(sample) || sample === name))
  return (
    <>
      <p>
        <b>{name}</b>, measured {records.length} {records.length === 1 ? 'time' : 'times'} in this study.
      </p>
      <ul className="drawer-list">
        {records.map(({ id, name: file, day }) => (
          <li key={id}>
            <Link to={{ station: 'read', rest: [id.slice(0, 12)] }}>{file}</Link> <span className="quiet">{day}</span>
          </li>
        ))}
      </ul>
    </>
  )
}
