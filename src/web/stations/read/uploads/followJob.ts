import type { Job, JobDone, JobProgress, ProblemDetails } from '../../../../server/contract/index.ts'
import { Away, Refusal, request } from '../../../api/request.ts'

interface FollowOptions {
  readonly progress?: (progress: JobProgress) => void
  readonly signal?: AbortSignal
}

/** That somebody stopped a job. */
export class Stopped extends Error {}

/**
 * Waits for a job, telling how far it is; an abort of the signal stops it on the server. Where the events break off, the job is asked how it
 * stands. Throws Refusal with the reason where it failed, Stopped, or Away.
 */
export function followJob(job: string, { progress, signal }: FollowOptions = {}): Promise<JobDone> {
  return new Promise((resolve, reject) => {
    const events = new EventSource(`/api/jobs/${job}/events`)
    const end = (settle: () => void): void => {
      events.close()
      signal?.removeEventListener('abort', stop)
      settle()
    }
    const stop = (): void => {
      end(() => reject(new Stopped('stopped')))
      request(`/api/jobs/${job}`, { method: 'DELETE' }).catch(() => undefined)
    }
    signal?.addEventListener('abort', stop)
    if (signal?.aborted === true) return stop()
    const heard = <T>(name: string, act: (data: T) => void): void =>
      events.addEventListener(name, (event) => act(JSON.parse((event as MessageEvent<string>).data || 'null') as T)) // the contract of these events
    heard<JobProgress>('progress', (data) => progress?.(data))
    heard<JobDone>('done', (data) => end(() => resolve(data)))
    heard<ProblemDetails>('failed', (data) => end(() => reject(new Refusal(data))))
    heard<null>('stopped', () => end(() => reject(new Stopped('stopped'))))
    events.addEventListener('error', () => {
      end(() => {
        jobStands(job).then(resolve, reject)
      })
    })
  })
}

/** How a job came out whose events broke off. */
async function jobStands(job: string): Promise<JobDone> {
  const stands = await request<Job>(`/api/jobs/${job}`)
  if (stands.done !== null) return stands.done
  if (stands.problem !== null) throw new Refusal(stands.problem)
  if (stands.state === 'stopped') throw new Stopped('stopped')
  await new Promise((resolve) => setTimeout(resolve, 700))
  if (stands.state !== 'running') throw new Away('the job is gone')
  return followJob(job)
}
