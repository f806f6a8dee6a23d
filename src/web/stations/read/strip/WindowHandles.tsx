import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useState } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { onKey } from './onKey.ts'
import type { TimePlace } from './timePlace.ts'

/** Rows of a step that count, and how far they may reach. */
export interface StepWindow {
  readonly step: number
  readonly from: number
  readonly to: number
  readonly least: number
  readonly most: number
  /** While a hand moves it. */
  readonly preview: (from: number, to: number) => void
  /** When it was let go somewhere else. */
  readonly moved: (from: number, to: number) => void
}

/** Pixels that a step must take for its handles to be told apart. */
const closest = 56

/** Two handles on the strip: from where to where the rows of the lit step count. Dragged, or moved by arrows and kept by Enter. */
export function WindowHandles({
  place,
  window,
}: {
  readonly place: TimePlace
  readonly window: StepWindow
}): ReactNode {
  const [held, setHeld] = useState<{ from: number; to: number }>(window)
  const { step, from, to } = window
  useEffect(() => setHeld({ from, to }), [from, to])
  const shift = (next: { from: number; to: number }): void => {
    setHeld(next)
    window.preview(next.from, next.to)
  }
  const keep = (next = held): void => {
    if (next.from !== from || next.to !== to) window.moved(next.from, next.to)
  }
  const shared = { place, window, keep, leave: () => shift({ from, to }) }
  const gap = (window.most - window.least) / 100
  // On a far look they would lie over each other: the trace of the step has them too.
  if (place.placeOf(window.most) - place.placeOf(window.least) < closest) return null
  return (
    <>
      <Handle
        {...shared}
        name={`Begin of the window of step ${step}`}
        side="left"
        at={held.from}
        least={window.least}
        most={held.to - gap}
        shift={(at) => shift({ ...held, from: at })}
      />
      <Handle
        {...shared}
        name={`End of the window of step ${step}`}
        side="right"
        at={held.to}
        least={held.from + gap}
        most={window.most}
        shift={(at) => shift({ ...held, to: at })}
      />
    </>
  )
}

interface HandleProps {
  readonly place: TimePlace
  readonly window: StepWindow
  readonly name: string
  readonly side: 'left' | 'right'
  readonly at: number
  readonly least: number
  readonly most: number
  readonly shift: (at: number) => void
  readonly keep: () => void
  readonly leave: () => void
}

function Handle({ place, window, name, side, at, least, most, shift, keep, leave }: HandleProps): ReactNode {
  const to = (next: number): void => shift(Math.min(most, Math.max(least, next)))
  const drag = (event: PointerEvent<HTMLDivElement>): void => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return
    const strip = event.currentTarget.parentElement
    if (strip !== null) to(place.timeAt(event.clientX - strip.getBoundingClientRect().left))
  }
  const key = (event: KeyboardEvent): void => {
    const far = (window.most - window.least) / (event.shiftKey ? 20 : 200)
    onKey(event, [
      ['ArrowLeft', () => to(at - far)],
      ['ArrowRight', () => to(at + far)],
      ['Home', () => to(least)],
      ['End', () => to(most)],
      ['Enter', keep],
      ['Escape', leave],
    ])
  }
  const x = place.placeOf(at)
  const { left, right, top, bottom } = place
  if (x < left - 1 || x > right + 1) return null
  return (
    <div
      className={`strip-handle ${side}`}
      role="slider"
      tabIndex={0}
      aria-label={`${name}: drag, or arrows and Enter`}
      aria-valuenow={at}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuetext={printQuantity(at, 'time', { digits: 6, unit: 's' })}
      title={name}
      style={{ left: x, top, height: bottom - top }}
      onKeyDown={key}
      onBlur={keep}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
      onPointerUp={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) keep()
      }}
    />
  )
}
