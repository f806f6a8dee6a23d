import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef, useState } from 'react'
import { type Dimension, printQuantity } from '../../core/quantity/index.ts'
import { QuantityField } from './QuantityField.tsx'
import { dragged, type Stepping, stepped } from './step.ts'

export interface QuantityProps {
  /** What is changed, for the ear and the hint: "axial force". */
  readonly name: string
  /** SI. */
  readonly value: number
  readonly dimension: Dimension
  /** Allowed range, SI; said while editing. */
  readonly least: number
  readonly most: number
  /** A default that nobody has confirmed yet: lighter ink. */
  readonly assumed?: boolean
  /** Size of an even step; without it each step goes to the next round number. */
  readonly even?: number
  readonly digits?: number
  /** Print in this unit always. */
  readonly unit?: string
  /** A reason why this value cannot be, though it lies in the range. */
  readonly refuse?: (value: number) => string | undefined
  /** A value that a person settled on. Confirming a default gives the value that stood there. */
  readonly change: (value: number) => void
  /** The value under a moving hand, for pictures to follow; undefined when the hand leaves. Without it there is no drag. */
  readonly preview?: (value: number | undefined) => void
}

/** Pixels before a press becomes a drag. */
const threshold = 4

/** A quantity in a sentence: click or Enter to edit, arrows to step, drag sideways to scrub. */
export function Quantity(props: QuantityProps): ReactNode {
  const { name, value, dimension, least, most, assumed = false, even, digits = 4, unit, change, preview } = props
  const [editing, setEditing] = useState(false)
  const hand = useRef<{ x: number; value: number; moved: boolean } | null>(null)
  const place = useRef<HTMLSpanElement>(null)
  const how: Stepping = { by: even === undefined ? 'log' : 'even', size: even ?? least, least, most }
  const print = (one: number): string => printQuantity(one, dimension, { digits, unit })

  const step = (count: number): void => {
    const next = stepped(value, count, how)
    if (next !== value && props.refuse?.(next) === undefined) change(next)
  }
  const keyDown = (event: KeyboardEvent): void => {
    const far = event.shiftKey ? 10 : 1
    if (event.key === 'Enter' || event.key === ' ') setEditing(true)
    else if (event.key === 'ArrowUp' || event.key === 'ArrowRight') step(far)
    else if (event.key === 'ArrowDown' || event.key === 'ArrowLeft') step(-far)
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  const down = (event: PointerEvent<HTMLSpanElement>): void => {
    if (event.button !== 0) return
    hand.current = { x: event.clientX, value, moved: false }
    event.currentTarget.setPointerCapture(event.pointerId)
  }
  const reached = (event: PointerEvent): number | undefined => {
    const held = hand.current
    if (held === null || preview === undefined) return undefined
    if (!held.moved && Math.abs(event.clientX - held.x) < threshold) return undefined
    held.moved = true
    const next = dragged(held.value, event.clientX - held.x, how)
    return props.refuse?.(next) === undefined ? next : undefined
  }
  const up = (event: PointerEvent): void => {
    const next = reached(event)
    const moved = hand.current?.moved === true
    hand.current = null
    if (!moved) return setEditing(true)
    preview?.(undefined)
    if (next !== undefined) change(next)
  }
  const cancel = (): void => {
    hand.current = null
    preview?.(undefined)
  }
  if (editing) {
    const leave = (how: 'keys' | 'away'): void => {
      setEditing(false)
      if (how === 'keys') requestAnimationFrame(() => place.current?.focus())
    }
    return <QuantityField {...props} print={print} how={how} leave={leave} />
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a number field of the browser knows no units and no decimal comma
    <span
      ref={place}
      role="spinbutton"
      tabIndex={0}
      className={assumed ? 'quantity assumed' : 'quantity'}
      aria-label={assumed ? `${name}, a default` : name}
      aria-valuenow={value}
      aria-valuemin={least}
      aria-valuemax={Number.isFinite(most) ? most : undefined}
      aria-valuetext={print(value)}
      title={`${name}${assumed ? ' (a default: confirm or change it)' : ''}: click to edit, arrows to step${preview === undefined ? '' : ', drag sideways'}`}
      onKeyDown={keyDown}
      onPointerDown={down}
      onPointerMove={(event) => {
        const next = reached(event)
        if (next !== undefined) preview?.(next)
      }}
      onPointerUp={up}
      onPointerCancel={cancel}
    >
      {print(value)}
    </span>
  )
}
