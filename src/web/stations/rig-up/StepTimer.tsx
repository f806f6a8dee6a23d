import { type ReactNode, useEffect, useState } from 'react'
import { clock } from './clock.ts'

interface StepTimerProps {
  readonly id: string
  readonly seconds: number
  /** The wait in words. */
  readonly words: string
}

const place = (id: string): string => `kufe:timer:${id}`

/** A timer for a wait. It goes by the clock on the wall, so that a sleeping tablet and a reload do not stop it. */
export function StepTimer({ id, seconds, words }: StepTimerProps): ReactNode {
  const [end, setEnd] = useState<number | null>(() => {
    const kept = Number(localStorage.getItem(place(id)))
    return kept > 0 ? kept : null
  })
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    if (end === null) return
    const beat = setInterval(() => setNow(Date.now()), 250)
    return () => clearInterval(beat)
  }, [end])
  const set = (to: number | null): void => {
    if (to === null) localStorage.removeItem(place(id))
    else localStorage.setItem(place(id), String(to))
    setNow(Date.now())
    setEnd(to)
  }
  if (end === null) {
    return (
      <p className="timer">
        Takes {words}.{' '}
        <button type="button" className="thumb" onClick={() => set(Date.now() + 1000 * seconds)}>
          Start the timer
        </button>
      </p>
    )
  }
  const left = Math.max(0, Math.ceil((end - now) / 1000))
  return (
    <p className="timer">
      <span role="timer" aria-label="Time left" className="large">
        {clock(left)}
      </span>{' '}
      {left === 0 && <b role="alert">The wait is over.</b>}{' '}
      <button type="button" className="thumb" onClick={() => set(null)}>
        {left === 0 ? 'Put it away' : 'Stop the timer'}
      </button>
    </p>
  )
}
