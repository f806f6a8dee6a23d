import '../acts.css'
import './rig-up.css'
import type { ReactNode } from 'react'
import { spokenTime } from '../../../core/plan/index.ts'
import { PaperLine } from '../../api/PaperLine.tsx'
import { go } from '../../frame/address.ts'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { useKeys } from '../../work/keys.ts'
import { useEdits } from '../../work/useEdits.ts'
import { PrintedSheet } from './PrintedSheet.tsx'
import { StepCard } from './StepCard.tsx'
import { emptySheet, firstOpen, withTick } from './sheetPaper.ts'
import { type SheetHold, useSheet } from './useSheet.ts'

/** The run sheet at the rig: one step at a time in large type, ticked with a thumb, kept also while the server is away. */
export default function RigUp({ study, question, rest }: StationProps): ReactNode {
  const hold = useSheet({ study, question })
  const { sheet, problems, paper } = hold
  if (paper.phase === 'reading' || question.phase === 'reading') return <Waiting what="Reading the run sheet" />
  if (sheet === undefined) {
    return (
      <Empty
        shows={`There is no run sheet yet: ${problems.map(({ what }) => what).join(' ')}`}
        todo={<Link to={{ station: 'plan' }}>Settle the plan</Link>}
      />
    )
  }
  return (
    <>
      {question.version === 0 && (
        <p className="notice no-print">
          Nobody has asked this study’s question yet, so this sheet is one of defaults.{' '}
          <Link to={{ station: 'plan' }}>Settle the plan</Link> before anything is mounted.
        </p>
      )}
      <div className="two-columns rig-up no-print">
        <Overview hold={hold} open={rest[0]} />
        <OneStep hold={hold} open={rest[0]} />
      </div>
      <PrintedSheet sheet={sheet} hold={hold} />
    </>
  )
}

/** All parts with how far they are; each step can be gone to. */
function Overview({ hold, open }: { readonly hold: SheetHold; readonly open: string | undefined }): ReactNode {
  const { sheet, entries, filled, paper, judged } = hold
  const edit = useEdits(paper)
  if (sheet === undefined) return null
  const current = entries.find(({ entry }) => entry.id === open) ?? firstOpen(entries, filled)
  const done = entries.filter(({ entry }) => filled.ticked.includes(entry.id)).length
  return (
    <nav aria-label="Run sheet">
      <p className="say">{sheet.subtitle}.</p>
      <p className="quiet">
        {done} of {entries.length} steps done; about {spokenTime(sheet.totals.time)} in all.
      </p>
      {sheet.foreword.map((text) => (
        <p key={text} className="foreword">
          {text}
        </p>
      ))}
      {sheet.parts.map((part) => (
        <section key={part.name}>
          <h3>{part.heading}</h3>
          <ol className="sheet-steps">
            {entries
              .filter((one) => one.part.name === part.name)
              .map(({ entry, number }) => {
                const ticked = filled.ticked.includes(entry.id)
                const outside = judged.get(entry.id)?.state === 'outside'
                return (
                  <li key={entry.id}>
                    <Link to={{ rest: [entry.id] }} aria-current={entry.id === current?.entry.id ? 'step' : undefined}>
                      <span className="tick" aria-hidden="true">
                        {ticked ? '✓' : number}
                      </span>
                      <span>
                        {firstSentence(entry.text)}
                        {ticked && <span className="unseen">, done</span>}
                        {outside && <b className="outside"> – outside what is acceptable</b>}
                      </span>
                    </Link>
                  </li>
                )
              })}
          </ol>
        </section>
      ))}
      <PaperLine paper={paper} what="the run sheet" />
      <p>
        <button type="button" onClick={() => print()}>
          Print it
        </button>{' '}
        {(filled.ticked.length > 0 || filled.answers.length > 0) && (
          <button type="button" onClick={() => edit(emptySheet, 'a fresh run sheet was begun')}>
            Begin a fresh sheet
          </button>
        )}
      </p>
    </nav>
  )
}

const firstSentence = (text: string): string => (/^.*?[.;:](?=\s|$)/.exec(text)?.[0] ?? text).replace(/[.;:]$/, '')

/** The step that somebody is at, with a way on and back. */
function OneStep({ hold, open }: { readonly hold: SheetHold; readonly open: string | undefined }): ReactNode {
  const { entries, filled, paper, sheet } = hold
  const edit = useEdits(paper)
  const index = Math.max(
    0,
    entries.findIndex(({ entry }) => entry.id === (open ?? firstOpen(entries, filled)?.entry.id)),
  )
  const at = entries[index]
  const goTo = (next: number): void => {
    const found = entries[next]
    if (found !== undefined) go({ rest: [found.entry.id] })
  }
  const tick = (): void => {
    if (at === undefined) return
    const done = !filled.ticked.includes(at.entry.id)
    edit(withTick(filled, at.entry.id, done), `step ${at.number} ${done ? 'done' : 'not done'}`)
    if (done && index + 1 < entries.length) goTo(index + 1)
  }
  useKeys('Rig up', [
    { key: 'ArrowRight', words: 'next step', press: () => goTo(index + 1) },
    { key: 'ArrowLeft', words: 'step before', press: () => goTo(index - 1) },
    { key: 't', words: 'tick this step and go on', press: tick },
  ])
  if (at === undefined || sheet === undefined) return null
  const ticked = filled.ticked.includes(at.entry.id)
  return (
    <article className="one-step" aria-label={`Step ${at.number} of ${entries.length}`}>
      <StepCard key={at.entry.id} at={at} of={entries.length} hold={hold} />
      <div className="step-acts">
        <button type="button" className="thumb" disabled={index === 0} onClick={() => goTo(index - 1)}>
          Back
        </button>
        <button type="button" className="thumb main" aria-pressed={ticked} onClick={tick}>
          {ticked ? 'Done ✓ – take the tick off' : index + 1 < entries.length ? 'Done, go on' : 'Done'}
        </button>
        <button type="button" className="thumb" disabled={index + 1 >= entries.length} onClick={() => goTo(index + 1)}>
          Next
        </button>
      </div>
    </article>
  )
}
