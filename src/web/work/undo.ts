import { useSyncExternalStore } from 'react'

/** A change that can be taken back, in words for people: `load 5 N → 8 N`. */
export interface Change {
  readonly words: string
  readonly undo: () => void
  readonly redo: () => void
}

export interface UndoState {
  readonly done: readonly Change[]
  readonly undone: readonly Change[]
  /** What the last step did, for the status line. */
  readonly said: string
}

const most = 200
let state: UndoState = { done: [], undone: [], said: '' }
const listeners = new Set<() => void>()

function put(next: UndoState): void {
  state = next
  for (const listener of listeners) listener()
}

/** Says that a person changed something, after it was done. What had been undone falls away. */
export const noteChange = (change: Change): void =>
  put({ done: [...state.done.slice(1 - most), change], undone: [], said: '' })

/** Takes back the last change; key z. */
export function undo(): void {
  const last = state.done.at(-1)
  if (last === undefined) {
    put({ ...state, said: 'Nothing to undo.' })
    return
  }
  put({ done: state.done.slice(0, -1), undone: [...state.undone, last], said: `Undone: ${last.words}` })
  last.undo()
}

/** Does the last undone change again; key Shift+z. */
export function redo(): void {
  const last = state.undone.at(-1)
  if (last === undefined) {
    put({ ...state, said: 'Nothing to do again.' })
    return
  }
  put({ done: [...state.done, last], undone: state.undone.slice(0, -1), said: `Done again: ${last.words}` })
  last.redo()
}

/** Forgets all changes: who goes to another study must not undo in the one before without seeing it. */
export const forgetChanges = (): void => put({ done: [], undone: [], said: '' })

const listen = (listener: () => void): (() => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useUndo = (): UndoState => useSyncExternalStore(listen, () => state)
