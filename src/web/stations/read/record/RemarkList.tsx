import { type ReactNode, useState } from 'react'
import { type Remark, remarkWords } from '../../../../core/terms/index.ts'
import { signMarkup } from '../../../../figure/index.ts'
import { Link } from '../../../frame/Link.tsx'
import { useLook } from '../../../frame/look.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { Term } from '../../../glossary/Term.tsx'
import { Svg } from '../Svg.tsx'
import type { MendsHold } from './useMends.ts'

interface RemarkListProps {
  readonly record: string
  readonly remarks: readonly Remark[]
  readonly hold: MendsHold
}

const weights = ['stops', 'caution', 'note'] as const

/** Every finding as a sentence with its number and place, what to do next, and room for a person's answer. The heaviest stand first. */
export function RemarkList({ record, remarks, hold }: RemarkListProps): ReactNode {
  const kinds = Map.groupBy(remarks, ({ kind }) => kind)
  const ordered = weights.flatMap((weight) => [...kinds].filter(([kind]) => remarkWords[kind].weight === weight))
  if (remarks.length === 0) return <p className="quiet">No remark on this record.</p>
  return (
    <section className="remarks" aria-labelledby="remarks">
      <h3 id="remarks">Remarks</h3>
      <ul>
        {ordered.map(([kind, own]) => (
          <RemarkGroup key={kind} record={record} remarks={own} hold={hold} />
        ))}
      </ul>
      {hold.doing !== undefined && <Waiting what={hold.doing} stop={hold.stop} />}
      {hold.refusal !== undefined && <Refused refusal={hold.refusal} />}
    </section>
  )
}

/** Remarks of one kind: the first in full, the rest on demand, for fifteen steps may say the same. */
function RemarkGroup({ record, remarks, hold }: RemarkListProps): ReactNode {
  const look = useLook()
  const [all, setAll] = useState(false)
  const [{ kind, next }] = remarks
  const { words, weight } = remarkWords[kind]
  const shown = all ? remarks : remarks.slice(0, 2)
  return (
    <li className="remark">
      <p className="remark-kind">
        <Svg markup={signMarkup(weight, look)} /> <Term word={kind}>{words}</Term>
      </p>
      {shown.map((remark) => (
        <RemarkLine key={`${remark.step} ${remark.sentence}`} record={record} remark={remark} hold={hold} />
      ))}
      {remarks.length > 2 && (
        <button type="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Fewer' : `${remarks.length - 2} more steps`}
        </button>
      )}
      <p className="quiet">Next: {next}</p>
    </li>
  )
}

function RemarkLine({
  record,
  remark,
  hold,
}: Omit<RemarkListProps, 'remarks'> & { readonly remark: Remark }): ReactNode {
  const step = remark.step ?? null
  const answers = hold.mends.answers ?? []
  const given = answers.find((one) => one.kind === remark.kind && one.step === step)
  const [text, setText] = useState<string | null>(null)
  const keep = (): void => {
    const answer = (text ?? '').trim()
    setText(null)
    if (answer === (given?.answer ?? '')) return
    hold.answer({ kind: remark.kind, step, answer })
  }
  return (
    <div className="remark-line">
      <p>
        {step !== null && (
          <>
            <Link to={{ rest: [record, step] }}>Step {step}</Link>:{' '}
          </>
        )}
        {remark.sentence}
      </p>
      {text === null ? (
        <p>
          {given !== undefined && <q>{given.answer}</q>}{' '}
          <button type="button" onClick={() => setText(given?.answer ?? '')}>
            {given === undefined ? 'Answer it' : 'Change the answer'}
          </button>
        </p>
      ) : (
        <p className="answer">
          <textarea
            aria-label={`Answer to: ${remark.sentence}`}
            // biome-ignore lint/a11y/noAutofocus: the person has just opened it to type
            autoFocus
            rows={2}
            maxLength={2000}
            placeholder="Why it may stand, or what was done about it"
            value={text}
            onChange={(event) => setText(event.target.value.replaceAll('\n', ' '))}
            onKeyDown={(event) => {
              if (event.key === 'Escape') setText(null)
              if (event.key === 'Enter') {
                event.preventDefault()
                keep()
              }
            }}
          />
          <button type="button" onClick={keep}>
            Keep the answer
          </button>{' '}
          <button type="button" onClick={() => setText(null)}>
            Leave it
          </button>
        </p>
      )}
    </div>
  )
}
