import { useSyncExternalStore } from 'react'
import { type Address, addressOf, type Change, linkFrom } from './addressOf.ts'

/** Goes there; `replace` for what the back key should not visit again, such as a dragged cursor. */
export function go(change: Change | string, how: 'push' | 'replace' = 'push'): void {
  const to = typeof change === 'string' ? change : linkFrom(current(), change)
  if (to === location.pathname + location.search) return
  if (how === 'push') history.pushState(null, '', to)
  else history.replaceState(null, '', to)
  tell()
}

let last: { readonly text: string; readonly address: Address } | undefined

/** The address now; the same object as long as nothing changed. */
function current(): Address {
  const text = location.pathname + location.search
  if (last?.text !== text) last = { text, address: addressOf(location.pathname, location.search) }
  return last.address
}

const listeners = new Set<() => void>()

function tell(): void {
  for (const listener of listeners) listener()
}

function listen(listener: () => void): () => void {
  if (listeners.size === 0) addEventListener('popstate', tell)
  listeners.add(listener)
  return () => {
    listeners.delete(listener)
    if (listeners.size === 0) removeEventListener('popstate', tell)
  }
}

/** The address, and again at each change of it. */
export const useAddress = (): Address => useSyncExternalStore(listen, current)
