import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react'
import { parseQuantity } from '../../core/quantity/index.ts'
import type { QuantityProps } from './quantityProps.ts'
import { type Stepping, stepped } from './step.ts'

interface QuantityFieldProps extends QuantityProps {
  readonly print: (value: number) => string
  readonly how: Stepping
  readonly leave: (how: 'keys' | 'away') => void
  /** Text to begin with, instead of the value. */
  readonly start?: string
}

/** A value as typed, or why it cannot be taken. */
type Read = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string }

/** The open quantity: text with a unit as people write it, its range below, and the reason where it is refused. */
export function QuantityField(props: QuantityFieldProps): ReactNode {
  const { name, value, least, most, print, how, change, leave, preview } = props
  // While somebody types, the value follows as a preview: what stood there before is kept here.
  const [before] = useState({ value, text: print(value) })
  const [text, setText] = useState(props.start ?? before.text)
  const [reason, setReason] = useState<string>()
  const over = useRef(false)
  const id = useId()

  const read = (typed: string): Read => readTyped(typed, props)
  const end = (how: 'keys' | 'away'): void => {
    over.current = true
    preview?.(undefined)
    leave(how)
  }
  const keep = (how: 'keys' | 'away'): void => {
    if (over.current) return
    if (props.start !== undefined && text.trim() === '') {
      end(how)
      return
    }
    const found = read(text)
    if (!found.ok) {
      setReason(found.reason)
      return
    }
    end(how)
    // Unchanged text keeps the exact value, which has more digits than are printed.
    if (props.start === undefined && text.trim() === before.text) change(before.value)
    else change(found.value, withUnit(text, before.text).trim())
  }
  const typed = (next: string): void => {
    setText(next)
    const found = read(next)
    if (found.ok) setReason(undefined)
    preview?.(found.ok ? found.value : undefined)
  }
  const keyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') keep('keys')
    else if (event.key === 'Escape') end('keys')
    else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      const found = read(text)
      const count = (event.key === 'ArrowUp' ? 1 : -1) * (event.shiftKey ? 10 : 1)
      if (found.ok) typed(print(stepped(found.value, count, how)))
    } else return
    event.preventDefault()
    event.stopPropagation()
  }
  const bounds = Number.isFinite(most) ? `${print(least)} to ${print(most)}` : `${print(least)} or more`
  return (
    <span className="quantity-open">
      <input
        aria-label={name}
        aria-describedby={id}
        aria-invalid={reason !== undefined}
        value={text}
        size={Math.max(4, text.length)}
        spellCheck={false}
        autoComplete="off"
        // biome-ignore lint/a11y/noAutofocus: the person has just opened it to type
        autoFocus
        onFocus={(event) => event.target.select()}
        onChange={(event) => typed(event.target.value)}
        onKeyDown={keyDown}
        onBlur={() => keep('away')}
      />
      <span id={id} className={reason === undefined ? 'range' : 'range refused'} role="status">
        {reason ?? `${bounds}; Enter keeps, Esc leaves`}
      </span>
    </span>
  )
}

function readTyped(typed: string, { value, dimension, least, most, print, refuse }: QuantityFieldProps): Read {
  const parsed = parseQuantity(withUnit(typed, print(value)), dimension)
  if (!parsed.ok) return { ok: false, reason: `${parsed.what} ${parsed.mend}` }
  if (parsed.value < least) return { ok: false, reason: `At least ${print(least)}.` }
  if (parsed.value > most) return { ok: false, reason: `At most ${print(most)}.` }
  const refused = refuse?.(parsed.value)
  return refused === undefined ? { ok: true, value: parsed.value } : { ok: false, reason: refused }
}

/** A bare number takes the unit that stood there: the sentence shows it. */
function withUnit(typed: string, before: string): string {
  const unit = /^[−-]?[\d.,e+-]+\s*(.+)$/.exec(before)?.[1]
  return unit !== undefined && /^\s*[−-]?\d[\d.,]*\s*$/.test(typed) ? `${typed.trim()} ${unit}` : typed
}
