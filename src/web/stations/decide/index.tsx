import '../acts.css'
import './decide.css'
import { type ReactNode, useState } from 'react'
import type { Comparison } from '../../../core/terms/index.ts'
import { PaperLine } from '../../api/PaperLine.tsx'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import { Refused } from '../../frame/Refused.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { DecidePictures } from './DecidePictures.tsx'
import { MarginSentence } from './MarginSentence.tsx'
import { NamedSpeeds } from './NamedSpeeds.tsx'
import { ReplicateList } from './ReplicateList.tsx'
import { SampleChoice } from './SampleChoice.tsx'
import { useComparison } from './useComparison.ts'
import { Verdict } from './Verdict.tsx'

/** Place of the pair that the address names; the first where it names none. */
const pairOf = ({ differences }: Comparison, pair: string | undefined): number =>
  differences[Number(pair)] === undefined ? 0 : Number(pair)

/** The verdict as a sentence, what it rests on as pictures, and every replicate with a way to take it out, for a reason. */
export default function Decide({ study, question, search }: StationProps): ReactNode {
  const [preview, setPreview] = useState<number>()
  const hold = useComparison(study.id, question.content, preview)
  const { gathered, comparison, problems, paper } = hold
  if (gathered.waiting || paper.phase === 'reading') return <Waiting what="Gathering the replicates" />
  if (gathered.value === undefined || gathered.value.replicates.length === 0) {
    return (
      <Empty
        shows="The verdict will stand here as a sentence, with the difference of the samples, its band and its margin. It needs records that were reduced and belong to a sample."
        todo={<Link to={{ station: 'read' }}>Read a record</Link>}
      />
    )
  }
  return (
    <div className="two-columns decide">
      <div>
        {gathered.refusal !== undefined && <Refused refusal={gathered.refusal} />}
        {comparison !== undefined && (
          <Verdict comparison={comparison} cautions={gathered.value.cautions} pair={pairOf(comparison, search.pair)} />
        )}
        {problems.length > 0 && (
          <div className="refused" role="alert">
            {problems.map(({ what, mend }) => (
              <p key={what}>
                {what} <em>{mend}</em>
              </p>
            ))}
          </div>
        )}
        <MarginSentence hold={hold} preview={setPreview} />
        <SampleChoice hold={hold} gathered={gathered.value} />
        <PaperLine paper={paper} what="the decision" />
        {comparison !== undefined && <NamedSpeeds comparison={comparison} />}
        <ReplicateList hold={hold} gathered={gathered.value} />
        <p className="onward">
          <a href={`/api/studies/${encodeURIComponent(study.id)}/decision.html`}>The decision on paper</a>,{' '}
          <a href={`/api/studies/${encodeURIComponent(study.id)}/decision.pdf`}>as PDF</a>.{' '}
          <Link to={{ station: 'report' }}>On to the reports of the records</Link>
        </p>
      </div>
      {comparison === undefined ? (
        <div />
      ) : (
        <DecidePictures comparison={comparison} place={pairOf(comparison, search.pair)} />
      )}
    </div>
  )
}
