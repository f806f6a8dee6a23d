import { useCallback, useEffect, useSyncExternalStore } from 'react'
import { onChange, onReturn } from './connection.ts'
import { Away, Refusal, request } from './request.ts'

/** What the server keeps at an address, as far as it is here. */
export interface Kept<T> {
  readonly value: T | undefined
  readonly refusal: Refusal | undefined
  /** True while it is asked for and nothing is here yet. */
  readonly waiting: boolean
}

interface Entry {
  state: Kept<unknown>
  asked: boolean
  readonly listeners: Set<() => void>
}

const nothing: Kept<never> = { value: undefined, refusal: undefined, waiting: true }
const entries = new Map<string, Entry>()

function entryAt(path: string): Entry {
  const found = entries.get(path)
  if (found !== undefined) return found
  const made: Entry = { state: nothing, asked: false, listeners: new Set() }
  entries.set(path, made)
  return made
}

function put(entry: Entry, state: Kept<unknown>): void {
  entry.state = state
  for (const listener of entry.listeners) listener()
}

async function ask(path: string): Promise<void> {
  const entry = entryAt(path)
  entry.asked = true
  try {
    put(entry, { value: await request(path), refusal: undefined, waiting: false })
  } catch (error) {
    // What is here stays here while the server is away; it is asked again when it is back.
    if (error instanceof Away) entry.asked = false
    else if (error instanceof Refusal) put(entry, { ...entry.state, refusal: error, waiting: false })
    else throw error
  }
}

/** Asks anew for all that begins with `start` and is shown somewhere; the rest is forgotten. */
export function refresh(start = '/api/'): void {
  for (const [path, entry] of entries) {
    if (!path.startsWith(start)) continue
    if (entry.listeners.size > 0) void ask(path)
    else entries.delete(path)
  }
}

let listening = false

function listenOnce(): void {
  if (listening) return
  listening = true
  onChange(() => refresh())
  onReturn(() => refresh())
}

/**
 * What the server keeps at `path`: asked for once, shared by all who use it, asked again when the server says that something
 * changed. `null` asks for nothing. The old value stays while a new one is under way, so that nothing jumps.
 */
export function useKept<T>(path: string | null): Kept<T> {
  const listen = useCallback(
    (listener: () => void) => {
      if (path === null) return () => undefined
      const { listeners } = entryAt(path)
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    [path],
  )
  useEffect(() => {
    listenOnce()
    if (path !== null && !entryAt(path).asked) void ask(path)
  }, [path])
  const state = useSyncExternalStore(listen, () => (path === null ? nothing : entryAt(path).state))
  return state as Kept<T> // the contract's type for this path
}
