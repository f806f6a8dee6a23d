import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'
import { printQuantity } from '../../core/quantity/index.ts'
import { QuantityField } from './QuantityField.tsx'
import type { QuantityProps } from './quantityProps.ts'
import { spokenRange } from './spokenRange.ts'
import { type Stepping, stepped } from './step.ts'
import { useScrub } from './useScrub.ts'

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
