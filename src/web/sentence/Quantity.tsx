import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'
import { type Dimension, printQuantity } from '../../core/quantity/index.ts'
import { QuantityField } from './QuantityField.tsx'
import { spokenRange } from './spokenRange.ts'
import { type Stepping, stepped } from './step.ts'
import { useScrub } from './useScrub.ts'

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
  /** As somebody typed it, where that is worth keeping; without it the most readable unit. */
  readonly text?: string
  /** Words around the number: (three) => "three", such as a count in letters. */
  readonly spell?: (value: number) => string
  /** A reason why this value cannot be, though it lies in the range. */
  readonly refuse?: (value: number) => string | undefined
  /** A value that a person settled on, with the text that was typed. Confirming a default gives the value that stood there. */
  readonly change: (value: number, text?: string) => void
  /** The value under a moving hand, for pictures to follow; undefined when the hand leaves. Without it there is no drag. */
  readonly preview?: (value: number | undefined) => void
}

/** A quantity in a sentence: click or Enter to edit, arrows to step, drag sideways to scrub. */
export function Quantity(props: QuantityProps): ReactNode {
  const { name, value, dimension, least, most, assumed = false, even, digits = 4, unit, change, preview } = props
  const [editing, setEditing] = useState(false)
  const place = useRef<HTMLSpanElement>(null)
  const how: Stepping = { by: even === undefined ? 'log' : 'even', size: even ?? least, least, most }
  const scrub = useScrub({ value, how, refuse: props.refuse, change, preview, press: () => setEditing(true) })
  const print = (one: number): string =>
    one === value && props.text !== undefined ? props.text : printQuantity(one, dimension, { digits, unit })
  const keyDown = (event: KeyboardEvent): void => {
    const count = steps[event.key]
    if (event.key === 'Enter' || event.key === ' ') setEditing(true)
    else if (count === undefined) return
    else {
      const next = stepped(value, count * (event.shiftKey ? 10 : 1), how)
      if (next !== value && props.refuse?.(next) === undefined) change(next)
    }
    event.preventDefault()
    event.stopPropagation()
  }
  if (editing) {
    const leave = (how: 'keys' | 'away'): void => {
      setEditing(false)
      if (how === 'keys') requestAnimationFrame(() => place.current?.focus())
    }
    return <QuantityField {...props} print={print} how={how} leave={leave} />
  }
  return (
    <span
      ref={place}
      role="spinbutton"
      tabIndex={0}
      className={assumed ? 'quantity assumed' : 'quantity'}
      aria-label={assumed ? `${name}, a default` : name}
      {...spokenRange({ value, least, most, dimension, unit })}
      aria-valuetext={print(value)}
      title={hint(name, assumed, preview !== undefined)}
      onKeyDown={keyDown}
      {...scrub}
    >
      {props.spell?.(value) ?? print(value)}
    </span>
  )
}

const steps: Readonly<Record<string, number | undefined>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }

const hint = (name: string, assumed: boolean, drags: boolean): string =>
  `${name}${assumed ? ' (a default: confirm or change it)' : ''}: click to edit, arrows to step${drags ? ', drag sideways' : ''}`
