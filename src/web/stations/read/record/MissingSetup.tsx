import { type ReactNode, useState } from 'react'
import type { JobMade, RecordAnswer } from '../../../../server/contract/index.ts'
import { refresh } from '../../../api/kept.ts'
import { Refusal, request } from '../../../api/request.ts'
import { writer } from '../../../api/writer.ts'
import { Refused } from '../../../frame/Refused.tsx'
import type { StationProps } from '../../../frame/stationProps.ts'
import { Waiting } from '../../../frame/Waiting.tsx'
import { followJob } from '../uploads/followJob.ts'
import { SetupPart } from '../uploads/SetupPart.tsx'
import { useSetupStand, useSetupText } from '../uploads/setupChoice.ts'

/** A record that nobody has reduced yet: say with which setup it was measured. */
export function MissingSetup({
  answer,
  study,
}: {
  readonly answer: RecordAnswer
  readonly study: StationProps['study']
}): ReactNode {
  const text = useSetupText(study.id)
  const stand = useSetupStand(text)
  const [doing, setDoing] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const reduce = async (): Promise<void> => {
    setRefusal(undefined)
    setDoing('Reducing the record')
    try {
      const body = {
        setup: text,
        by: writer() === '' ? 'somebody' : writer(),
        why: 'said with which setup it was measured',
      }
      const { job } = await request<JobMade>(`/api/records/${answer.record.id}/amend`, { method: 'POST', body })
      await followJob(job, { progress: (progress) => setDoing(progress.doing) })
      refresh('/api/records')
      refresh('/api/studies')
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      setRefusal(error)
    } finally {
      setDoing(undefined)
    }
  }
  return (
    <>
      <p className="say">
        This record has no result yet:{' '}
        {answer.setup === null
          ? 'nobody has said with which setup it was measured.'
          : 'it could not be reduced with its setup.'}
      </p>
      <SetupPart study={study.id} question={null} text={text} stand={stand} />
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
