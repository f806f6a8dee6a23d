import type { ReactNode } from 'react'
import { setWriter, useWriter } from '../api/writer.ts'

/** Initials of who sits here: every kept change bears them. */
export function WriterField(): ReactNode {
  const initials = useWriter()
  return (
    <label className="writer" title="Your initials: every change that is kept bears them">
      by{' '}
      <input
        value={initials}
        size={3}
        maxLength={12}
        spellCheck={false}
        placeholder="??"
        onChange={(event) => setWriter(event.target.value)}
      />
    </label>
  )
}
