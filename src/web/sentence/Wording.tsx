import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'

interface WordingProps {
  /** What is changed: "name of the lower body". */
  readonly name: string
  readonly value: string
  readonly assumed?: boolean
  /** Names to choose from, fetched when it opens; anything else may be typed. */
  readonly offers?: () => Promise<readonly string[]>
  readonly change: (value: string) => void
}

/** Words in a sentence: click or Enter to edit, Escape to leave. */
export function Wording({ name, value, assumed = false, offers, change }: WordingProps): ReactNode {
  const [text, setText] = useState<string | null>(null)
  const [known, setKnown] = useState<readonly string[]>([])
  const place = useRef<HTMLButtonElement>(null)
  const over = useRef(false)
  const list = `offers-${name.replaceAll(/\W+/g, '-')}`
  if (text === null) {
    const open = (): void => {
      over.current = false
      setText(value)
      void offers?.().then(setKnown)
    }
    return (
      <button
        ref={place}
        type="button"
        className={assumed ? 'wording assumed' : 'wording'}
        title={`${name}: click to edit`}
        aria-label={`${name}: ${value === '' ? 'not said' : value}`}
        onClick={open}
      >
        {value === '' ? '…' : value}
      </button>
    )
  }
  const leave = (keep: boolean): void => {
    if (over.current) return
    over.current = true
    setText(null)
    const said = text.trim()
    if (keep && said !== '' && (said !== value || assumed)) change(said)
    requestAnimationFrame(() => place.current?.focus())
  }
  const keyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') leave(true)
    else if (event.key === 'Escape') leave(false)
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    <>
      <input
        className="wording-open"
        aria-label={name}
        value={text}
        list={known.length === 0 ? undefined : list}
        size={Math.max(8, text.length)}
        maxLength={300}
        // biome-ignore lint/a11y/noAutofocus: the person has just opened it to type
        autoFocus
        onFocus={(event) => event.target.select()}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={keyDown}
        onBlur={() => leave(true)}
      />
      {known.length > 0 && (
        <datalist id={list}>
          {known.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
    </>
  )
}
