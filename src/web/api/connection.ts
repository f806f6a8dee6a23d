import { useSyncExternalStore } from 'react'
import type { ChangedEvent } from '../../server/contract/index.ts'

/** Something kept has changed, here or in another tab or by somebody else; nothing is said where only a beat was heard. */
export type KeptChange = Partial<ChangedEvent>

let lost = false
let source: EventSource | undefined
let timer: ReturnType<typeof setTimeout> | undefined
const watchers = new Set<() => void>()
const changes = new Set<(change: KeptChange) => void>()
const returns = new Set<() => void>()

function setLost(now: boolean): void {
  if (lost === now) return
  lost = now
  for (const watcher of watchers) watcher()
  if (!now) for (const back of returns) back()
}

/** Nobody answered. From now on the server is asked every two seconds until it is back. */
export function connectionLost(): void {
  setLost(true)
  source?.close()
  source = undefined
  if (timer === undefined) timer = setTimeout(knock, 1000)
}

export const connectionSeen = (): void => setLost(false)

async function knock(): Promise<void> {
  timer = undefined
  try {
    const answer = await fetch('/api/lab')
    if (!answer.ok && answer.status >= 502) throw new Error('still away')
  } catch {
    timer = setTimeout(knock, 2000)
    return
  }
  setLost(false)
  openEvents()
}

function openEvents(): void {
  if (source !== undefined || typeof EventSource === 'undefined') return
  const opened = new EventSource('/api/events')
  source = opened
  const heard = (event: MessageEvent<string>): void => {
    let change: KeptChange = {}
    try {
      change = JSON.parse(event.data)
    } catch {
      // A beat of the heart: something may have changed all the same.
    }
    for (const listener of changes) listener(change)
  }
  opened.addEventListener('message', heard)
  opened.addEventListener('changed', heard)
  opened.addEventListener('error', () => {
    if (source !== opened) return
    connectionLost()
  })
}

/** Calls back at each change of what is kept. */
export function onChange(listener: (change: KeptChange) => void): () => void {
  changes.add(listener)
  openEvents()
  return () => changes.delete(listener)
}

/** Calls back when the server has come back. */
export function onReturn(listener: () => void): () => void {
  returns.add(listener)
  return () => returns.delete(listener)
}

const watch = (watcher: () => void): (() => void) => {
  watchers.add(watcher)
  return () => watchers.delete(watcher)
}

/** True while the server does not answer. */
export const useLost = (): boolean => useSyncExternalStore(watch, () => lost)
