import { useSyncExternalStore } from 'react'
import { PaperDesk } from './paper.ts'
import type { PaperState } from './paperState.ts'

const desks = new Map<string, PaperDesk<unknown>>()

function deskAt<T>(path: string): PaperDesk<T> {
  const found = desks.get(path) ?? new PaperDesk<unknown>(path)
  desks.set(path, found)
  return found as PaperDesk<T> // one kind of paper has one type of content
}

/** Where papers lie. */
export const studyPaper = (study: string, kind: string): string =>
  `/api/studies/${encodeURIComponent(study)}/papers/${encodeURIComponent(kind)}`
export const recordPaper = (record: string, kind: string): string =>
  `/api/records/${encodeURIComponent(record)}/papers/${encodeURIComponent(kind)}`
export const labPaper = (kind: string, name: string): string =>
  `/api/lab/papers/${encodeURIComponent(kind)}/${encodeURIComponent(name)}`

export interface PaperHold<T> extends PaperState<T> {
  /** Takes a new content; saved by itself. Give it also to `noteChange` (work/undo.ts) so that it can be undone. */
  readonly edit: (content: T, why?: string) => void
  readonly takeTheirs: () => void
  readonly writeOver: () => void
  readonly seen: () => void
  readonly again: () => void
  /** What stands in the paper this instant, for a change that rests on it. */
  readonly latest: () => T | null
}

/** A kept document and the ways to change it. Show `<PaperLine>` beside what is edited: it says how the saving stands. */
export function usePaper<T>(path: string): PaperHold<T> {
  const desk = deskAt<T>(path)
  const state = useSyncExternalStore(desk.listen, desk.now)
  const { edit, takeTheirs, writeOver, seen, again } = desk
  return { ...state, latest: () => desk.now().content, edit, takeTheirs, writeOver, seen, again }
}
