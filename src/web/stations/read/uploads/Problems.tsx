import { type ReactNode, useState } from 'react'
import type { UploadLook } from '../../../../server/contract/index.ts'
import { mendHere } from './mendHere.ts'

/** Problems that are seen before somebody asks for all. */
const first = 3

/** What stands in the way of a file, at its line. What the terminal would mend by an option is mended here at the headings. */
export function Problems({ problems }: Pick<UploadLook, 'problems'>): ReactNode {
  const [all, setAll] = useState(false)
  const shown = all ? problems : problems.slice(0, first)
  return (
    <div className="refused" role="alert">
      {shown.map(({ what, mend, place }) => (
        <p key={`${place.line} ${place.name} ${what}`}>
          {place.line === undefined ? '' : `Line ${place.line}: `}
          {what} <em>{mendHere(mend)}</em>
        </p>
      ))}
      {problems.length > first && (
        <button type="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Fewer' : `${problems.length - first} more`}
        </button>
      )}
    </div>
  )
}
