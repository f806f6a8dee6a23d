import { type ReactNode, useState } from 'react'
import { PaperLine } from '../../api/PaperLine.tsx'
import { studyPaper, usePaper } from '../../api/usePaper.ts'
import { Link } from '../../frame/Link.tsx'
import { useEdits } from '../../work/useEdits.ts'
import type { LackingItem } from './lackingItem.ts'

/** The study's `notes` paper: what no setup holds and people have to say, by the item of a complete report. */
type Notes = Readonly<Record<string, string>>

interface LackingListProps {
  readonly items: readonly LackingItem[]
  readonly study: string
  readonly record: string
}

/** What the report still lacks, the emptiest first; each item is filled in where it stands, or leads to where it is. */
export function LackingList({ items, study, record }: LackingListProps): ReactNode {
  const paper = usePaper<Notes>(studyPaper(study, 'notes'))
  const notes = paper.content ?? {}
  const edit = useEdits(paper)
  const wanting = (['lacking', 'partly'] as const).flatMap((state) => items.filter((item) => item.state === state))
  const keep = (key: string, item: string, text: string): void => {
    const { [key]: _, ...others } = notes
    edit(text === '' ? others : { ...others, [key]: text }, `report, ${item}`)
  }
  return (
    <section aria-labelledby="lacking">
      <h3 id="lacking">What it still lacks</h3>
      {items.length > 0 && (
        <p className="quiet">
          {items.length - wanting.length} of {items.length} items of a complete report are whole.
        </p>
      )}
      <ul className="lacking">
        {wanting.map((item) => (
          <LackingRow
            key={item.item}
            {...{ item, record }}
            said={item.note === null ? '' : (notes[item.note] ?? '')}
            keep={keep}
          />
        ))}
      </ul>
      <PaperLine paper={paper} what="the notes of the report" />
    </section>
  )
}

interface LackingRowProps {
  readonly item: LackingItem
  readonly record: string
  readonly said: string
  readonly keep: (key: string, item: string, text: string) => void
}

function LackingRow({ item: { state, item, text, note, setup }, record, said, keep }: LackingRowProps): ReactNode {
  const [open, setOpen] = useState(false)
  const [typed, setTyped] = useState(said)
  return (
    <li className={state}>
      <b>{item}</b> <span className="quiet">{state === 'partly' ? 'in part' : 'lacking'}</span>
      <p>{text.replaceAll(/ in the note “\w+” of the report/g, '')}</p>
      <p>
        {setup.length > 0 && (
          <Link to={{ station: 'read', rest: [record.slice(0, 12)], search: { setup: setup[0] } }}>
            Change the setup of this record
          </Link>
        )}{' '}
        {note !== null && !open && (
          <button type="button" onClick={() => setOpen(true)}>
            Say it here
          </button>
        )}
      </p>
      {note !== null && open && (
        <p className="answer">
          <textarea
            aria-label={item}
            // biome-ignore lint/a11y/noAutofocus: the person has just opened it to type
            autoFocus
            rows={3}
            maxLength={2000}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
          <button
            type="button"
            onClick={() => {
              setOpen(false)
              if (typed.trim() !== said) keep(note, item, typed.trim())
            }}
          >
            Keep it
          </button>{' '}
          <button type="button" onClick={() => setOpen(false)}>
            Leave it
          </button>
        </p>
      )}
    </li>
  )
}
