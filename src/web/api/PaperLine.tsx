import type { ReactNode } from 'react'
import { Refused } from '../frame/Refused.tsx'
import type { PaperHold } from './usePaper.ts'

const words = {
  reading: 'reading …',
  kept: 'kept',
  unsaved: 'not kept yet …',
  saving: 'keeping …',
  waiting: 'kept in this browser until the server is back',
  superseded: '',
  refused: 'not kept',
} as const

/** How the saving stands; asks where somebody else wrote in between. */
export function PaperLine<T>({ paper, what }: { readonly paper: PaperHold<T>; readonly what: string }): ReactNode {
  const { phase, version, theirs, takenFrom, refusal } = paper
  return (
    <div className="paper-line">
      <p className="quiet" role="status">
        {words[phase]}
        {phase === 'kept' && version > 0 ? `, version ${version}` : ''}
        {phase === 'kept' && version === 0 ? ' nothing yet' : ''}
      </p>
      {refusal !== undefined && <Refused refusal={refusal} />}
      {phase === 'refused' && (
        <button type="button" onClick={paper.again}>
          Try again
        </button>
      )}
      {takenFrom !== null && (
        <p className="notice" role="status">
          {takenFrom.by === '' ? 'Somebody' : takenFrom.by} changed {what} meanwhile; this is now version{' '}
          {takenFrom.version}.{' '}
          <button type="button" onClick={paper.seen}>
            Seen
          </button>
        </p>
      )}
      {theirs !== null && (
        <div className="notice" role="alert">
          <p>
            {theirs.by === '' ? 'Somebody' : theirs.by} kept version {theirs.version} of {what}
            {theirs.why === '' ? '' : ` (“${theirs.why}”)`} while you were changing version {version}. Nothing is lost
            yet: both are here.
          </p>
          <p>
            <button type="button" onClick={paper.takeTheirs}>
              Take version {theirs.version}, drop mine
            </button>{' '}
            <button type="button" onClick={paper.writeOver}>
              Keep mine as version {theirs.version + 1}
            </button>
          </p>
        </div>
      )}
    </div>
  )
}
