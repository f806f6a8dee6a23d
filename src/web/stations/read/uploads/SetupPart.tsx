import { type ReactNode, useState } from 'react'
import type { SetupChecked, SetupsAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import { Refusal, request } from '../../../api/request.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { SetupText } from './SetupText.tsx'
import { type SetupStand, setSetupText, setupInWords } from './setupChoice.ts'

interface SetupPartProps {
  readonly study: string
  /** The question's document, where somebody has asked one. */
  readonly question: object | null
  readonly text: string
  readonly stand: SetupStand
  /** The text lies open from the beginning. */
  readonly open?: boolean
}

/** With which setup the dropped files were measured: that of the plan, that of an earlier record, or a text. */
export function SetupPart({ study, question, text, stand, open: begin = false }: SetupPartProps): ReactNode {
  const { value } = useKept<SetupsAnswer>('/api/setups')
  const [open, setOpen] = useState(begin)
  const [refusal, setRefusal] = useState<Refusal>()
  const setups = value?.setups ?? []
  const chosen = setups.find((one) => one.text === text)
  const fromPlan = async (): Promise<void> => {
    setRefusal(undefined)
    try {
      const made = await request<SetupChecked>('/api/setups/fromQuestion', { method: 'POST', body: { question } })
      setSetupText(study, made.text)
      setOpen(true)
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
      else throw error
    }
  }
  return (
    <section className="setup-part" aria-labelledby="setup-part">
      <h3 id="setup-part">Setup</h3>
      <p>
        {stand.state === 'sound' ? setupInWords(stand.checked.setup) : <Stand stand={stand} />}
        {'. '}
        {text !== '' && (
          <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? 'Close the text' : 'Look at it or change it'}
          </button>
        )}
      </p>
      <p className="setup-choices">
        {question !== null && (
          <button type="button" onClick={() => void fromPlan()}>
            Take it from the plan
          </button>
        )}
        {setups.length > 0 && (
          <label>
            {question === null ? 'Take' : 'or'} one that the lab has{' '}
            <select
              value={chosen?.id ?? ''}
              onChange={(event) => {
                const found = setups.find(({ id }) => id === event.target.value)
                if (found !== undefined) setSetupText(study, found.text)
              }}
            >
              <option value="">{text === '' ? 'choose …' : 'another text'}</option>
              {setups.map(({ id, setup, records }) => (
                <option key={id} value={id}>
                  {setup === null ? id.slice(0, 8) : setupInWords(setup)} ({records}{' '}
                  {records === 1 ? 'record' : 'records'}, {id.slice(0, 6)})
                </option>
              ))}
            </select>
          </label>
        )}
        {text === '' && (
          <button type="button" onClick={() => setOpen(true)}>
            Write one
          </button>
        )}
      </p>
      {refusal !== undefined && <Refused refusal={refusal} />}
      {(open || stand.state === 'refused') && (
        <SetupText text={text} stand={stand} change={(next) => setSetupText(study, next)} />
      )}
    </section>
  )
}

function Stand({ stand }: { readonly stand: SetupStand }): ReactNode {
  switch (stand.state) {
    case 'empty':
      return 'None chosen yet: files are kept once it is known how they were measured'
    case 'reading':
      return 'Reading it …'
    case 'away':
      return 'The server is away; the text is kept in this browser'
    case 'refused':
      return `Not sound yet: ${stand.problem.problems?.length ?? 1} to mend below`
    case 'sound':
      return ''
  }
}
