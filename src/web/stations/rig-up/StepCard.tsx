import { type ReactNode, useState } from 'react'
import { spokenTime } from '../../../core/plan/index.ts'
import { parseQuantity, printQuantity } from '../../../core/quantity/index.ts'
import type { SheetAnswer, SheetCheck } from '../../../core/terms/index.ts'
import { useEdits } from '../../work/useEdits.ts'
import { StepTimer } from './StepTimer.tsx'
import { SweepTable } from './SweepTable.tsx'
import { type NumberedEntry, withAnswer } from './sheetPaper.ts'
import type { SheetHold } from './useSheet.ts'

interface StepCardProps {
  readonly at: NumberedEntry
  readonly of: number
  readonly hold: SheetHold
}

/** One step in large type: cautions first, what to do, what to read, what is acceptable and what to do when it is not. */
export function StepCard({ at, of, hold }: StepCardProps): ReactNode {
  const { entry, part, number } = at
  const { sheet, judged } = hold
  return (
    <>
      <p className="quiet">
        Step {number} of {of} · {part.heading}
      </p>
      {entry.cautions.map((caution) => (
        <p key={caution} className="caution" role="note">
          <b>Caution.</b> {caution}
        </p>
      ))}
      <p className="large">{entry.text}</p>
      {part.name === 'sweep' && entry.id === 'sweep' && sheet !== undefined && <SweepTable steps={sheet.sweep} />}
      {entry.duration >= 60 && <StepTimer id={entry.id} seconds={entry.duration} words={spokenTime(entry.duration)} />}
      {entry.check !== null && <Check id={entry.id} check={entry.check} hold={hold} />}
      <Note id={entry.id} hold={hold} />
      {judged.get(entry.id)?.state === 'within' && <p className="within">Within what is acceptable.</p>}
    </>
  )
}

function Check({
  id,
  check,
  hold,
}: {
  readonly id: string
  readonly check: SheetCheck
  readonly hold: SheetHold
}): ReactNode {
  const answer = hold.judged.get(id)
  const edit = useEdits(hold.paper)
  const given = hold.filled.answers.find((one) => one.id === id)
  const keep = (value: SheetAnswer['value'], words: string): void =>
    edit(withAnswer(hold.filled, { ...given, id, value }), `${check.read}: ${words}`)
  return (
    <section className="check" aria-label="What to read">
      <div className="large">
        {check.dimension === 'yes' ? (
          <YesNo read={check.read} value={given?.value} keep={keep} />
        ) : (
          <Reading check={check} value={given?.value} keep={keep} />
        )}
      </div>
      <p>
        Acceptable: <b>{check.accept}</b>.
      </p>
      {answer?.state === 'outside' ? (
        <p className="refused" role="alert">
          Outside what is acceptable. {check.otherwise}
        </p>
      ) : (
        <p className="quiet">Otherwise: {check.otherwise}</p>
      )}
    </section>
  )
}

interface FieldProps {
  readonly value: SheetAnswer['value'] | undefined
  readonly keep: (value: SheetAnswer['value'], words: string) => void
}

function YesNo({ read, value, keep }: FieldProps & { readonly read: string }): ReactNode {
  return (
    <fieldset className="yes-no">
      <legend>{read}:</legend>
      {[true, false].map((one) => (
        <button
          key={String(one)}
          type="button"
          className="thumb"
          aria-pressed={value === one}
          onClick={() => keep(value === one ? null : one, one ? 'yes' : 'no')}
        >
          {one ? 'yes' : 'no'}
        </button>
      ))}
    </fieldset>
  )
}

/** A reading with its unit, as people write it; taken when the field is left or Enter pressed. */
function Reading({ check, value, keep }: FieldProps & { readonly check: SheetCheck }): ReactNode {
  const { read, dimension } = check
  const printed = typeof value === 'number' && dimension !== 'yes' ? printQuantity(value, dimension, { digits: 5 }) : ''
  const [text, setText] = useState(printed)
  const [reason, setReason] = useState('')
  const example = dimension === 'yes' ? '' : printQuantity(check.high ?? check.low ?? 1, dimension, { digits: 3 })
  const take = (): void => {
    if (dimension === 'yes' || text === printed) return
    if (text.trim() === '') {
      keep(null, 'taken back')
      return
    }
    const parsed = parseQuantity(text, dimension)
    setReason(parsed.ok ? '' : `${parsed.what} ${parsed.mend}`)
    if (parsed.ok) keep(parsed.value, printQuantity(parsed.value, dimension, { digits: 4 }))
  }
  return (
    <label>
      {read}:{' '}
      <input
        className="reading-field"
        value={text}
        inputMode="text"
        autoComplete="off"
        size={12}
        placeholder={`such as ${example}`}
        aria-invalid={reason !== ''}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => event.key === 'Enter' && take()}
      />
      {reason !== '' && (
        <span className="refused" role="alert">
          {reason}
        </span>
      )}
    </label>
  )
}

/** Words beside a step: what was different, what was seen. */
function Note({ id, hold }: { readonly id: string; readonly hold: SheetHold }): ReactNode {
  const edit = useEdits(hold.paper)
  const given = hold.filled.answers.find((one) => one.id === id)
  const [text, setText] = useState(given?.note ?? '')
  const take = (): void => {
    const note = text.trim()
    if (note === (given?.note ?? '')) return
    edit(
      withAnswer(hold.filled, { id, value: given?.value ?? null, ...(note === '' ? {} : { note }) }),
      `note: ${note}`,
    )
  }
  return (
    <label className="step-note">
      Note{' '}
      <textarea
        value={text}
        rows={2}
        maxLength={1000}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
      />
    </label>
  )
}
