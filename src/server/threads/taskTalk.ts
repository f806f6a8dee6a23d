import type { LabCall } from '../../bench/lab/index.ts'
import type { Outcome, Outside, Progress } from '../../core/terms/index.ts'

/** What a task gets to work with in its thread. */
export interface TaskDesk {
  readonly call: LabCall
  readonly outside: Outside
  /**
   * The last moment to be stopped: false where somebody has stopped the task, and then it must keep nothing. Once true, it
   * is not stopped any more.
   */
  readonly mayKeep: () => boolean
}

/** Use cases that take long, by their names. Arguments and answers are plain data. */
export type TaskTable = Readonly<Record<string, (args: never, desk: TaskDesk) => Promise<Outcome<unknown>>>>

/** Whether a task runs, was told to stop, or is past stopping. One number that both threads see. */
export const taskStates = { running: 0, stopped: 1, keeping: 2 } as const

/** To a thread. */
export interface TaskOrder {
  readonly number: number
  readonly name: string
  readonly args: unknown
  readonly call: LabCall
  readonly program: string
  /** One of `taskStates`, shared. */
  readonly state: SharedArrayBuffer
}

/** From a thread. */
export type TaskSaid = { readonly number: number } & (
  | { readonly progress: { readonly doing: string; readonly done: number; readonly of: number } }
  | { readonly outcome: Outcome<unknown> }
  | { readonly fault: string }
)

/** How a task is run. */
export interface TaskOptions {
  /** Who does it and why; the server itself where nobody is named. */
  readonly by?: Pick<LabCall, 'who' | 'why'>
  /** Somebody waits at the screen: it goes before all jobs, and has a thread that no job takes. */
  readonly quick?: true
  readonly progress?: Progress
  readonly stop?: AbortSignal
}

/** What became of a task. */
export type TaskEnd<T> = { readonly stopped: true } | { readonly stopped: false; readonly outcome: Outcome<T> }
