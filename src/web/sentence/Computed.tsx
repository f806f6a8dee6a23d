import { type ReactNode, useEffect, useLayoutEffect, useRef } from 'react'
import { go, useAddress } from '../frame/address.ts'
import { Link } from '../frame/Link.tsx'
import type { Why } from './why.ts'

interface ComputedProps {
  readonly why: Why
  readonly children: ReactNode
}

/** A number that the program computed; a click or Enter asks it "why?". The open answer stands in the address as `?why=`. */
export function Computed({ why, children }: ComputedProps): ReactNode {
  const { search } = useAddress()
  const open = search.why === why.key
  const button = useRef<HTMLButtonElement>(null)
  const turn = (): void => go({ search: { why: open ? null : why.key } }, 'replace')
  return (
    <>
      <button
        ref={button}
        type="button"
        className="computed"
        aria-expanded={open}
        title={`Why? ${why.what}`}
        onClick={turn}
      >
        {children}
      </button>
      {open && <WhyNote why={why} at={button.current} close={turn} />}
    </>
  )
}

interface WhyNoteProps {
  readonly why: Why
  readonly at: HTMLElement | null
  readonly close: () => void
}

/** The answer, laid under its number. */
function WhyNote({ why, at, close }: WhyNoteProps): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    const note = place.current
    if (note === null) return
    if (!note.matches(':popover-open')) note.showPopover()
    const from = (at ?? note.previousElementSibling)?.getBoundingClientRect()
    if (from === undefined) return
    const left = Math.max(8, Math.min(from.left, innerWidth - note.offsetWidth - 8))
    const below = from.bottom + 6
    const top = below + note.offsetHeight < innerHeight ? below : Math.max(8, from.top - note.offsetHeight - 6)
    note.style.left = `${left}px`
    note.style.top = `${top}px`
  }, [at])
  useEffect(() => {
    const left = (event: PointerEvent): void => {
      const target = event.target
      if (target instanceof Node && !place.current?.contains(target) && !at?.contains(target)) close()
    }
    const escaped = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return
      event.preventDefault()
      close()
      at?.focus()
    }
    document.addEventListener('pointerdown', left)
    document.addEventListener('keydown', escaped)
    return () => {
      document.removeEventListener('pointerdown', left)
      document.removeEventListener('keydown', escaped)
    }
  }, [at, close])
  const { what, formula, values, source, validity, changes, word } = why
  return (
    <div ref={place} popover="manual" className="why" role="note" aria-label={`Why? ${what}`}>
      <p className="why-what">{what}</p>
      <p className="formula">{formula}</p>
      <dl>
        {values.map(({ sign, words, value }) => (
          <div key={sign}>
            <dt>{sign}</dt>
            <dd>
              <b>{value}</b> {words}
            </dd>
          </div>
        ))}
      </dl>
      <p>{source}</p>
      <p>Valid: {validity}</p>
      <p>Changes with: {changes}</p>
      {word !== undefined && (
        <p>
          <Link to={{ search: { word, why: null } }}>In the glossary</Link>
        </p>
      )}
    </div>
  )
}
