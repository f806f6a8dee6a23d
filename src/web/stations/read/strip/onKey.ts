import type { KeyboardEvent } from 'react'

/** Does what belongs to the pressed key, if anything, and then nobody else hears of it. */
export function onKey(event: KeyboardEvent, acts: readonly (readonly [key: string, act: () => void])[]): void {
  const found = acts.find(([key]) => key === event.key)
  if (found === undefined) return
  event.preventDefault()
  event.stopPropagation()
  found[1]()
}
