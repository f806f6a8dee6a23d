import type { StripEngine } from './stripEngine.ts'
import { panned, span } from './view.ts'

/** What a hand on the strip may do beside moving it. */
export interface HandTells {
  /** The time under a hovering pointer. */
  readonly over: (time: number) => void
  /** The pointer has gone elsewhere. */
  readonly left: () => void
  /** A press that moved nothing. */
  readonly pressed: (time: number) => void
}

/** Pixels before a press becomes a drag. */
const threshold = 4

/** Pointers on the strip: one pans, two zoom, a press chooses, Ctrl and wheel zoom, a sideways wheel pans. Gives how to let go. */
export function handOn(place: HTMLElement, engine: StripEngine, tells: HandTells): () => void {
  const down = new Map<number, number>()
  let travelled = 0
  const xOf = (event: { clientX: number }): number => event.clientX - place.getBoundingClientRect().left
  const press = (event: PointerEvent): void => {
    if (event.button !== 0) return
    if (down.size === 0) travelled = 0
    down.set(event.pointerId, xOf(event))
    place.setPointerCapture(event.pointerId)
  }
  const move = (event: PointerEvent): void => {
    const x = xOf(event)
    const before = down.get(event.pointerId)
    if (before === undefined) {
      tells.over(engine.timeAt(x))
      return
    }
    travelled += Math.abs(x - before)
    down.set(event.pointerId, x)
    const others = [...down].filter(([id]) => id !== event.pointerId).map(([, at]) => at)
    if (others.length === 1) {
      pinch(engine, others[0], { before, x })
      return
    }
    if (travelled < threshold) return
    const { left, right } = engine.layout
    engine.look(panned(engine.view, ((before - x) / (right - left)) * span(engine.view), engine.limits))
  }
  const up = (event: PointerEvent): void => {
    if (down.delete(event.pointerId) && travelled < threshold) tells.pressed(engine.timeAt(xOf(event)))
  }
  const cancel = (event: PointerEvent): void => void down.delete(event.pointerId)
  const wheel = (event: WheelEvent): void => {
    if (event.ctrlKey || event.metaKey) engine.zoom(Math.exp(event.deltaY / 300), engine.timeAt(xOf(event)))
    else if (Math.abs(event.deltaX) > Math.abs(event.deltaY)) engine.pan(event.deltaX / 900)
    else return
    event.preventDefault()
  }
  place.addEventListener('pointerdown', press)
  place.addEventListener('pointermove', move)
  place.addEventListener('pointerup', up)
  place.addEventListener('pointercancel', cancel)
  place.addEventListener('pointerleave', tells.left)
  place.addEventListener('wheel', wheel, { passive: false })
  return () => {
    place.removeEventListener('pointerdown', press)
    place.removeEventListener('pointermove', move)
    place.removeEventListener('pointerup', up)
    place.removeEventListener('pointercancel', cancel)
    place.removeEventListener('pointerleave', tells.left)
    place.removeEventListener('wheel', wheel)
  }
}

/** Two fingers: what lay under the resting one stays there. */
function pinch(engine: StripEngine, rest: number, { before, x }: { before: number; x: number }): void {
  const now = Math.abs(x - rest)
  if (now < 8) return
  engine.zoom(Math.abs(before - rest) / now, engine.timeAt(rest))
}
