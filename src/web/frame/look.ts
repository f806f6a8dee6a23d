import { useSyncExternalStore } from 'react'
import type { PaletteName } from '../../figure/index.ts'

/** Paper white or night blue. Pictures are drawn with the palette of the same name. */
export type Look = Extract<PaletteName, 'light' | 'dark'>

const place = 'kufe:look'
const night = matchMedia('(prefers-color-scheme: dark)')
const paper = matchMedia('print')
const listeners = new Set<() => void>()

night.addEventListener('change', applyLook)
paper.addEventListener('change', () => onPaper(paper.matches))
addEventListener('beforeprint', () => onPaper(true))
addEventListener('afterprint', () => onPaper(false))

let printing = false

function chosen(): Look {
  const kept = localStorage.getItem(place)
  if (kept === 'light' || kept === 'dark') return kept
  return night.matches ? 'dark' : 'light'
}

/** Puts the look on the page; before the first paint. */
export function applyLook(): void {
  document.documentElement.dataset.look = chosen()
  for (const listener of listeners) listener()
}

export function toggleLook(): void {
  localStorage.setItem(place, chosen() === 'light' ? 'dark' : 'light')
  applyLook()
}

function listen(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** Pictures are light on paper. */
const seen = (): Look => (printing || paper.matches ? 'light' : chosen())

function onPaper(now: boolean): void {
  printing = now
  for (const listener of listeners) listener()
}

/** The look of pictures, and again when it changes. */
export const useLook = (): Look => useSyncExternalStore(listen, seen)
