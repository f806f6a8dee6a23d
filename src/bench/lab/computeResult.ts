import { done, type Origin, type Outcome, type Progress } from '../../core/terms/index.ts'
import { readSetup, type SetupFile } from '../../io/index.ts'
import type { ResultKind } from '../../store/index.ts'
import { fitRecord } from '../fitRecord.ts'
import type { Given } from '../given.ts'
import { reduceSource } from '../reduceSource.ts'
import { resultText } from '../resultDocument.ts'
import { type Brief, briefOf } from './brief.ts'

/** All that decides a result, as plain data: it can be handed to another thread or machine. */
export interface ComputeTask {
  /** Path of the raw bytes, or they themselves. */
  readonly source: string | Uint8Array
  /** Name of the file as it came. */
  readonly file: string
  readonly setupText: string
  readonly given: Given
  readonly kind: ResultKind
  readonly program: string
}

/** A result as the lab keeps it: `text` is byte for byte what "kufe reduce --json" prints. */
export interface ComputedResult {
  readonly kind: ResultKind
  readonly origin: Origin
  readonly text: string
  readonly brief: Brief
}

/** Computes a result. It depends on the task alone: the same task gives the same bytes in any thread. */
export async function computeResult(
  task: ComputeTask,
  progress: Progress = () => {},
): Promise<Outcome<ComputedResult>> {
  const { source, file, given, kind, program } = task
  const setup = setupOf(task.setupText)
  if (!setup.ok) return setup
  const outside = { now: refuseClock, progress, stop: { aborted: false }, program }
  const reduced = await reduceSource({ source, file, setup: setup.value, given }, outside)
  if (!reduced.ok) return reduced
  const whole = kind === 'fit' ? fitRecord(reduced.value, outside) : reduced.value
  return done({ kind, origin: whole.origin, text: resultText(whole), brief: briefOf(whole) })
}

const refuseClock = (): never => {
  throw new RangeError('a result has no time in it')
}

let last: { readonly text: string; readonly read: Outcome<SetupFile> } | undefined

/** Most records of a lab share their setup with the one before. */
function setupOf(text: string): Outcome<SetupFile> {
  if (last?.text !== text) last = { text, read: readSetup(text, 'setup') }
  return last.read
}
