import { type ReactNode, useEffect, useState } from 'react'
import type { JobMade, RecordAnswer } from '../../../../server/contract/index.ts'
import { refresh } from '../../../api/kept.ts'
import { Away, Refusal, request } from '../../../api/request.ts'
import { writer } from '../../../api/writer.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { followJob } from '../uploads/followJob.ts'
import { SetupPart } from '../uploads/SetupPart.tsx'
import { setSetupText, useSetupStand, useSetupText } from '../uploads/setupChoice.ts'

interface ReduceWithProps {
  readonly answer: RecordAnswer
  /** Under which name the browser keeps the text while somebody writes on it. */
  readonly place: string
  /** For the history. */
  readonly why: string
  readonly done?: () => void
}

/** A record that nobody has reduced yet: say with which setup it was measured. */
export function MissingSetup({ answer, study }: { readonly answer: RecordAnswer; readonly study: string }): ReactNode {
  return (
    <>
      <p className="say">
        This record has no result yet:{' '}
        {answer.setup === null
          ? 'nobody has said with which setup it was measured.'
          : 'it could not be reduced with its setup.'}
      </p>
      <ReduceWith answer={answer} place={study} why="said with which setup it was measured" />
    </>
  )
}

/** Corrects the setup of a record: its text, to be changed, and the record is reduced again beside the old result. */
export function ChangeSetup({ answer, done }: { readonly answer: RecordAnswer; readonly done: () => void }): ReactNode {
  const place = `record-${answer.record.id.slice(0, 12)}`
  const text = useSetupText(place)
  const own = answer.setup?.text ?? ''
  useEffect(() => {
    if (text === '') setSetupText(place, own)
  }, [text, place, own])
  return (
    <>
      <ReduceWith
        answer={answer}
        place={place}
        why="setup corrected"
        done={() => {
          setSetupText(place, '')
          done()
        }}
      />
      <p>
        <button
          type="button"
          onClick={() => {
            setSetupText(place, '')
            done()
          }}
        >
          Leave it as it was
        </button>
      </p>
    </>
  )
}

function ReduceWith({ answer, place, why, done }: ReduceWithProps): ReactNode {
  const text = useSetupText(place)
  const stand = useSetupStand(text)
  const [doing, setDoing] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const reduce = async (): Promise<void> => {
    setRefusal(undefined)
    setDoing('Reducing the record')
    try {
      const body = { setup: text, by: writer() === '' ? 'somebody' : writer(), why }
      const { job } = await request<JobMade>(`/api/records/${answer.record.id}/amend`, { method: 'POST', body })
      await followJob(job, { progress: (progress) => setDoing(progress.doing) })
      refresh('/api/records')
      refresh('/api/studies')
      done?.()
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
      else if (!(error instanceof Away)) throw error
    } finally {
      setDoing(undefined)
    }
  }
  return (
    <>
      <SetupPart study={place} question={null} text={text} stand={stand} open={answer.setup !== null} />
      <p>
        <button
          type="button"
          className="main-act"
          disabled={stand.state !== 'sound' || doing !== undefined}
          onClick={() => void reduce()}
        >
          Reduce it with this setup
        </button>
      </p>
      {doing !== undefined && <Waiting what={doing} />}
      {refusal !== undefined && <Refused refusal={refusal} />}
    </>
  )
}
