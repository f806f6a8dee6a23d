import { type ReactNode, useRef, useState } from 'react'
import type { JobDone, JobMade } from '../../../server/contract/index.ts'
import { Away, Refusal, request } from '../../api/request.ts'
import { Refused } from '../../frame/Refused.tsx'
import { Waiting } from '../../frame/Waiting.tsx'
import { followJob, Stopped } from '../read/uploads/followJob.ts'

type Verified = NonNullable<JobDone['verified']>

/** Computes a record's result again from its raw bytes and says whether every byte is the same. */
export function VerifyPart({ record }: { readonly record: string }): ReactNode {
  const [doing, setDoing] = useState<{ what: string; done?: number; of?: number }>()
  const [found, setFound] = useState<Verified>()
  const [refusal, setRefusal] = useState<Refusal>()
  const stop = useRef<AbortController>(undefined)
  const verify = async (): Promise<void> => {
    stop.current = new AbortController()
    setFound(undefined)
    setRefusal(undefined)
    setDoing({ what: 'Computing it again' })
    try {
      const { job } = await request<JobMade>(`/api/records/${record}/verify`, { method: 'POST' })
      const done = await followJob(job, {
        signal: stop.current.signal,
        progress: (at) => setDoing({ what: at.doing, ...(at.of > 0 ? { done: at.done, of: at.of } : {}) }),
      })
      setFound(done.verified)
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
      else if (!(error instanceof Stopped) && !(error instanceof Away)) throw error
    } finally {
      setDoing(undefined)
    }
  }
  return (
    <div className="take-file">
      <button type="button" className="main-act" disabled={doing !== undefined} onClick={() => void verify()}>
        Verify the record
      </button>
      {doing !== undefined && <Waiting {...doing} stop={() => stop.current?.abort()} />}
      {refusal !== undefined && <Refused refusal={refusal} />}
      {found !== undefined && (
        <div role="status" className={found.findings.length === 0 ? 'notice' : 'refused'}>
          {found.findings.length === 0 ? (
            <p>
              {found.same} {found.same === 1 ? 'result was' : 'results were'} computed again from the raw bytes: every
              byte is the same.
            </p>
          ) : (
            found.findings.map(({ sentence }) => <p key={sentence}>{sentence}</p>)
          )}
        </div>
      )}
    </div>
  )
}
