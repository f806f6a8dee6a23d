import { useEffect, useState, useSyncExternalStore } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import type { Setup } from '../../../../core/terms/index.ts'
import type { SetupChecked } from '../../../../server/contract/index.ts'
import { Away, Refusal, request, type SaidProblem } from '../../../api/request.ts'

/** The text of a study's setup as somebody types it, in the browser's own store: it outlives tab and server. */
const place = (study: string): string => `kufe:setup:${study}`
const listeners = new Set<() => void>()

const textOf = (study: string): string => localStorage.getItem(place(study)) ?? ''

export function setSetupText(study: string, text: string): void {
  localStorage.setItem(place(study), text)
  for (const listener of listeners) listener()
}

export const useSetupText = (study: string): string =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => textOf(study),
  )

/** How a setup stands: being read, sound, or with problems at their lines. */
export type SetupStand =
  | { readonly state: 'empty' | 'reading' | 'away' }
  | { readonly state: 'sound'; readonly text: string; readonly checked: SetupChecked }
  | { readonly state: 'refused'; readonly problem: SaidProblem }

/** Pause in typing after which a setup is read. */
const pause = 400

/** The server's word on a setup text, a moment after the last letter. */
export function useSetupStand(text: string): SetupStand {
  const [stand, setStand] = useState<SetupStand>({ state: 'empty' })
  useEffect(() => {
    if (text.trim() === '') return setStand({ state: 'empty' })
    const stop = new AbortController()
    setStand((before) => (before.state === 'empty' || before.state === 'away' ? { state: 'reading' } : before))
    const timer = setTimeout(() => {
      request<SetupChecked>('/api/setups/check', { method: 'POST', body: { text }, signal: stop.signal }).then(
        (checked) => setStand({ state: 'sound', text, checked }),
        (error: unknown) => {
          if (error instanceof Refusal) setStand({ state: 'refused', problem: error.problem })
          else if (error instanceof Away) setStand({ state: 'away' })
        },
      )
    }, pause)
    return () => {
      clearTimeout(timer)
      stop.abort()
    }
  }, [text])
  return stand
}

/** A setup in a line, so that people know it again. */
export function setupInWords({ rig, pair, liquid, run }: Setup): string {
  const load = run.axialForce === undefined ? [] : [printQuantity(run.axialForce, 'force', { digits: 3 })]
  return [`${pair.upper.name} on ${pair.lower.name}`, liquid?.name ?? 'dry', ...load, rig.name].join(', ')
}
