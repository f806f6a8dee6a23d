import { type ReactNode, useEffect, useState } from 'react'
import { redo, undo, useUndo } from '../work/undo.ts'

/** How long what was undone stays written, in milliseconds. */
const stays = 6000

/** At the foot: undo and do again, and what the last of them did. */
export function UndoLine(): ReactNode {
  const { done, undone, said } = useUndo()
  const [shown, setShown] = useState(said)
  useEffect(() => {
    setShown(said)
    const timer = setTimeout(() => setShown(''), stays)
    return () => clearTimeout(timer)
  }, [said])
  const last = done.at(-1)
  const next = undone.at(-1)
  return (
    <footer className="undo-line">
      <span role="status">{shown}</span>
      {last !== undefined && (
        <button type="button" onClick={undo} title={`Undo (z): ${last.words}`}>
          Undo
        </button>
      )}
      {next !== undefined && (
        <button type="button" onClick={redo} title={`Do again (Shift+z): ${next.words}`}>
          Do again
        </button>
      )}
    </footer>
  )
}
