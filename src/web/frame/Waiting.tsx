import type { ReactNode } from 'react'

interface WaitingProps {
  /** What is being done: "Reading the record". */
  readonly what: string
  /** How much of how much, where that is known. */
  readonly done?: number
  readonly of?: number
  readonly stop?: () => void
}

/** A sign of work: seen only after 0.3 s; with a bar where the end is known and a way to stop it. */
export const Waiting = ({ what, done, of, stop }: WaitingProps): ReactNode => (
  <div className="waiting" role="status">
    <p>
      {what} …{' '}
      {stop !== undefined && (
        <button type="button" onClick={stop}>
          Stop
        </button>
      )}
    </p>
    {done !== undefined && of !== undefined && <progress value={done} max={of} aria-label={what} />}
  </div>
)
