import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from 'react'
import { printQuantity } from '../../../core/quantity/index.ts'
import { type LoadWindowData, loadWindowPlaces } from '../../../figure/index.ts'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { spokenRange } from '../../sentence/spokenRange.ts'
import { stepped } from '../../sentence/step.ts'
import type { LivePlan } from './livePlan.ts'

interface LoadHandlesProps {
  readonly hold: QuestionHold
  readonly live: LivePlan
  readonly data: LoadWindowData
  readonly width: number
  readonly scale: number
}

/** Handles over the window of speed and load: the load line up and down, the ends of the speeds sideways. */
export function LoadHandles({ hold, live, data, width, scale }: LoadHandlesProps): ReactNode {
  const places = loadWindowPlaces(data, { width })
  const { plot, x, y } = places
  const { ask, rig } = hold.question
  const load = live.suggestion.axialForce
  const [low, high] = [data.loads[0], data.loads[data.loads.length - 1]]
  const [slow, fast] = [data.speeds[0], data.speeds[data.speeds.length - 1]]
  return (
    <>
      <Handle
        name="axial force"
        value={load}
        dimension="force"
        least={Math.max(low, rig.axialForce.floor ?? 0)}
        most={Math.min(high, rig.axialForce.ceiling ?? high)}
        box={{ left: plot.left * scale, top: y(load) * scale - 9, width: (plot.right - plot.left) * scale, height: 18 }}
        along="vertical"
        at={(_, top) => places.loadAt(top / scale)}
        move={(value) => hold.preview('ask.axialForce', value)}
        keep={(value) => hold.set('ask.axialForce', value)}
      />
      {(['slowest', 'fastest'] as const).map((end) => (
        <Handle
          key={end}
          name={`${end} sliding speed`}
          value={ask[end]}
          dimension="velocity"
          least={end === 'slowest' ? slow : ask.slowest}
          most={end === 'slowest' ? ask.fastest : fast}
          box={{
            left: x(ask[end]) * scale - 9,
            top: plot.top * scale,
            width: 18,
            height: (plot.bottom - plot.top) * scale,
          }}
          along="horizontal"
          at={(left) => places.speedAt(left / scale)}
          move={(value) => hold.preview(`ask.${end}`, value)}
          keep={(value) => hold.set(`ask.${end}`, value)}
        />
      ))}
    </>
  )
}

interface HandleProps {
  readonly name: string
  readonly value: number
  readonly dimension: 'force' | 'velocity'
  readonly least: number
  readonly most: number
  readonly box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number }
  readonly along: 'horizontal' | 'vertical'
  /** Value under a place within the picture. */
  readonly at: (left: number, top: number) => number
  readonly move: (value: number | undefined) => void
  readonly keep: (value: number) => void
}

function Handle({ name, value, dimension, least, most, box, along, at, move, keep }: HandleProps): ReactNode {
  const held = useRef<{ readonly at: typeof at; readonly origin: DOMRect; moved: boolean } | null>(null)
  const round = (next: number): number => Number(Math.min(most, Math.max(least, next)).toPrecision(2))
  // The axes may grow while the hand moves: the scale of where it began holds.
  const under = (event: PointerEvent): number | undefined => {
    const hand = held.current
    return hand === null ? undefined : round(hand.at(event.clientX - hand.origin.left, event.clientY - hand.origin.top))
  }
  const keyDown = (event: KeyboardEvent): void => {
    const up = event.key === 'ArrowUp' || event.key === 'ArrowRight'
    if (!up && event.key !== 'ArrowDown' && event.key !== 'ArrowLeft') return
    const count = (up ? 1 : -1) * (event.shiftKey ? 10 : 1)
    const next = stepped(value, count, { by: 'log', size: least, least, most })
    if (next !== value) keep(next)
    event.preventDefault()
    event.stopPropagation()
  }
  const spoken = spokenRange({ value, least, most, dimension })
  const cancel = (): void => {
    held.current = null
    move(undefined)
  }
  return (
    <div
      role="slider"
      tabIndex={0}
      className={`handle handle-${along}`}
      aria-label={name}
      aria-orientation={along}
      aria-valuenow={spoken['aria-valuenow']}
      aria-valuemin={spoken['aria-valuemin']}
      aria-valuemax={spoken['aria-valuemax']}
      aria-valuetext={printQuantity(value, dimension, { digits: 3 })}
      style={box}
      onKeyDown={keyDown}
      onPointerDown={(event) => {
        const origin = event.currentTarget.parentElement?.getBoundingClientRect()
        if (event.button !== 0 || origin === undefined) return
        held.current = { at, origin, moved: false }
        event.currentTarget.setPointerCapture(event.pointerId)
      }}
      onPointerMove={(event) => {
        const next = under(event)
        if (next === undefined || held.current === null) return
        held.current.moved = true
        move(next)
      }}
      onPointerUp={(event) => {
        const next = under(event)
        const moved = held.current?.moved === true
        cancel()
        if (moved && next !== undefined) keep(next)
      }}
      onPointerCancel={cancel}
    />
  )
}
