import type { JobMade, NewMends } from '../../../../server/contract/index.ts'
import { refresh } from '../../../api/kept.ts'
import { request } from '../../../api/request.ts'
import { writer } from '../../../api/writer.ts'
import { followJob } from '../uploads/followJob.ts'
import type { Mends } from './windowList.ts'

interface Move {
  readonly record: string
  /** Version of the `mends` paper that was seen. */
  readonly version: number
  readonly mends: Mends
  readonly why: string
  readonly signal?: AbortSignal
  readonly progress?: (doing: string) => void
}

/** Keeps moved windows and has the record reduced with them. Throws Refusal (412 where somebody moved in between), Away or Stopped. */
export async function keepMends({ record, version, mends, why, signal, progress }: Move): Promise<void> {
  const body: NewMends = {
    windows: [...mends.windows],
    answers: [...(mends.answers ?? [])],
    by: writer() === '' ? 'somebody' : writer(),
    why,
  }
  const headers = { 'if-match': `"${version}"` }
  const { job } = await request<JobMade>(`/api/records/${record}/mends`, { method: 'PUT', body, headers, signal })
  await followJob(job, { signal, progress: ({ doing }) => progress?.(doing) })
  refresh('/api/records')
  refresh('/api/studies')
}
