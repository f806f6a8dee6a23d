import type { ReactNode } from 'react'
import type { Refusal } from '../api/request.ts'

/** A refusal in words, put where its cause is: what, where, and what would mend it. */
export function Refused({ refusal }: { readonly refusal: Refusal }): ReactNode {
  const { title, detail, problems = [] } = refusal.problem
  return (
    <div className="refused" role="alert">
      {problems.length === 0 && <p>{detail ?? title}</p>}
      {problems.map(({ what, mend, place }) => (
        <p key={`${place.line ?? ''} ${place.name ?? ''} ${what}`}>
          {place.line === undefined ? '' : `Line ${place.line}: `}
          {what} <em>{mend}</em>
        </p>
      ))}
    </div>
  )
}
