import type { JobProgress, ReadingAnswers, UploadLook } from '../../../../server/contract/index.ts'
import type { Refusal } from '../../../api/request.ts'

/**
 * How far a dropped file is. `queued` waits for its turn · `sending` · `away` the server is gone, it is sent again when it is back ·
 * `looking` the server reads its head · `asking` a person looks at the guess and keeps it · `inLine` others are kept first ·
 * `keeping` reduced and fitted · `kept` ·
 * `failed` · `stopped`.
 */
export type UploadPhase =
  | 'queued'
  | 'sending'
  | 'away'
  | 'looking'
  | 'asking'
  | 'inLine'
  | 'keeping'
  | 'kept'
  | 'failed'
  | 'stopped'

/** What a person says about a file before it is kept. */
export interface UploadSaid {
  readonly sample: string
  /** null where nobody knows. */
  readonly replicate: number | null
  readonly mountedBy: string
  readonly ballSet: string
}

/** One dropped file on its way into the lab. */
export interface Upload {
  /** Of this page alone. */
  readonly key: number
  readonly study: string
  readonly file: File
  readonly phase: UploadPhase
  /** Share that has been sent, 0 to 1. */
  readonly sent: number
  /** Name of the upload on the server, once it is there. */
  readonly id: string | null
  readonly look: UploadLook | null
  /** What a person said of its columns and of how it is written. */
  readonly reading: ReadingAnswers
  readonly said: UploadSaid
  readonly progress: JobProgress | null
  readonly refusal: Refusal | null
  /** The record that it became. */
  readonly record: string | null
}

export const phaseWords: Readonly<Record<UploadPhase, string>> = {
  queued: 'waits for its turn',
  sending: 'being sent',
  away: 'the server is away; it is sent again when it is back',
  looking: 'being looked at',
  asking: 'ready to be kept',
  inLine: 'waits until others are reduced',
  keeping: 'being reduced',
  kept: 'kept',
  failed: 'not kept',
  stopped: 'stopped',
}
