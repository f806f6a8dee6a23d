import type { JobMade, MovedWindow, NewMends } from '../../../../server/contract/index.ts'
import { refresh } from '../../../api/kept.ts'
import { request } from '../../../api/request.ts'
import { writer } from '../../../api/writer.ts'
import { followJob } from '../uploads/followJob.ts'

/** What people changed about the reading of a record: the record's `mends` paper. */
export interface Mends {
  readonly windows: readonly MovedWindow[]
  readonly answers?: readonly RemarkAnswer[]
}

/** A remark that a person answered with a reason. `step` is null for one on the whole record. */
export interface RemarkAnswer {
  readonly kind: string
  readonly step: number | null
  readonly answer: string
}

export const noMends: Mends = { windows: [], answers: [] }

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

/** The windows with that of one step put to another place, or back to the program's where it is null. */
export const withWindow = (
  windows: readonly MovedWindow[],
  step: number,
  window: Pick<MovedWindow, 'from' | 'to'> | null,
): readonly MovedWindow[] =>
  [...windows.filter((one) => one.step !== step), ...(window === null ? [] : [{ step, ...window }])].sort(
    (a, b) => a.step - b.step,
  )

/** The answers with one more, or without it where the text is empty. */
export const withAnswer = (answers: readonly RemarkAnswer[], said: RemarkAnswer): readonly RemarkAnswer[] => [
  ...answers.filter(({ kind, step }) => kind !== said.kind || step !== said.step),
  ...(said.answer.trim() === '' ? [] : [{ ...said, answer: said.answer.trim() }]),
]
