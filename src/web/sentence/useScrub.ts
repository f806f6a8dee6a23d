import { type PointerEvent, useRef } from 'react'
import { dragged, type Stepping } from './step.ts'

interface Scrub {
  readonly value: number
  readonly how: Stepping
  readonly refuse: ((value: number) => string | undefined) | undefined
  readonly change: (value: number) => void
  readonly preview: ((value: number | undefined) => void) | undefined
  /** A press that was no drag. */
  readonly press: () => void
}

interface ScrubHandlers {
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerCancel: () => void
}

/** Pixels before a press becomes a drag. */
const threshold = 4

/** Drags a value sideways; every place of the hand is previewed, the last one kept. */
export function useScrub({ value, how, refuse, change, preview, press }: Scrub): ScrubHandlers {
  const hand = useRef<{ readonly x: number; readonly value: number; moved: boolean } | null>(null)
  const reached = (event: PointerEvent): number | undefined => {
    const held = hand.current
    if (held === null || preview === undefined) return undefined
    if (!held.moved && Math.abs(event.clientX - held.x) < threshold) return undefined
    held.moved = true
    const next = dragged(held.value, event.clientX - held.x, how)
    return refuse?.(next) === undefined ? next : undefined
  }
  return {
    onPointerDown: (event) => {
      if (event.button !== 0) return
      hand.current = { x: event.clientX, value, moved: false }
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove: (event) => {
      const next = reached(event)
      if (next !== undefined) preview?.(next)
    },
    onPointerUp: (event) => {
      if (hand.current === null) return
      const next = reached(event)
      const { moved } = hand.current
      hand.current = null
      if (!moved) {
        press()
        return
      }
      preview?.(undefined)
      if (next !== undefined) change(next)
    },
    onPointerCancel: () => {
      hand.current = null
      preview?.(undefined)
    },
  }
}
