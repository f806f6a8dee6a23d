import { useSyncExternalStore } from 'react'

const place = 'kufe:by'
const listeners = new Set<() => void>()
let usual = ''

/** Initials of who sits here, as every kept change names them; empty until somebody said. */
export const writer = (): string => localStorage.getItem(place) ?? usual

/** The lab's own people, for a browser that nobody has told yet. */
export function usualWriter(initials: string): void {
  if (usual === initials) return
  usual = initials
  tell()
}

export function setWriter(initials: string): void {
  localStorage.setItem(place, initials)
  tell()
}

function tell(): void {
  for (const listener of listeners) listener()
}

const listen = (listener: () => void): (() => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useWriter = (): string => useSyncExternalStore(listen, writer)
