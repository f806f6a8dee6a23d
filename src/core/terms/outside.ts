/** Stop signal, as much of the platform's own as pure code may see. */
export interface StopSignal {
  readonly aborted: boolean
}

/** Progress of a long job: `done` of `of` units of `what`. */
export type Progress = (what: string, done: number, of: number) => void

/** All that makes a run unrepeatable, made by a face alone and handed down. */
export interface Outside {
  // biome-ignore lint/style/noRestrictedGlobals: the type alone; the clock itself comes from a face
  readonly now: () => Date
  readonly progress: Progress
  readonly stop: StopSignal
  readonly program: string
}
