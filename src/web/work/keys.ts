import { useEffect, useRef } from 'react'

/** One key with what it does. `key` as the browser names it, with Shift+ or Ctrl+ before: `z`, `Shift+z`, `ArrowRight`, `/`. */
export interface Key {
  readonly key: string
  readonly words: string
  readonly press: (event: KeyboardEvent) => void
}

export interface KeyGroup {
  readonly where: string
  readonly keys: readonly Key[]
}

const place = 'kufe:letters'
const groups: KeyGroup[] = []

/** All keys that work now, the innermost group first; `?` shows them. */
export const keysNow = (): readonly KeyGroup[] => [...groups].reverse()

/** Single letters and digits can be switched off, for those whose speech or hands set them off (WCAG 2.2, 2.1.4). */
export const lettersOn = (): boolean => localStorage.getItem(place) !== 'off'
export const setLetters = (on: boolean): void => localStorage.setItem(place, on ? 'on' : 'off')

const typing = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    /^(input|textarea|select)$/i.test(target.tagName) ||
    target.closest('dialog[open]') !== null)

function nameOf(event: KeyboardEvent): string {
  const letter = event.key.length === 1
  const key = letter ? event.key.toLowerCase() : event.key
  // Signs such as ? or / need Shift on some keyboards: the sign itself is the key.
  const shift = event.shiftKey && (!letter || /[a-z0-9]/.test(key)) ? 'Shift+' : ''
  return `${event.ctrlKey || event.metaKey ? 'Ctrl+' : ''}${event.altKey ? 'Alt+' : ''}${shift}${key}`
}

function pressed(event: KeyboardEvent): void {
  if (event.defaultPrevented || event.isComposing || typing(event.target)) return
  const name = nameOf(event)
  if (name.replace('Shift+', '').length === 1 && !lettersOn()) return
  for (const { keys } of keysNow()) {
    const key = keys.find((one) => one.key === name)
    if (key === undefined) continue
    event.preventDefault()
    key.press(event)
    return
  }
}

/** Keys that work while the caller is on the page; they rest while somebody types or a dialog is open. Inner groups win. */
export function useKeys(where: string, keys: readonly Key[]): void {
  const latest = useRef(keys)
  latest.current = keys
  useEffect(() => {
    const group: KeyGroup = {
      where,
      get keys() {
        return latest.current
      },
    }
    if (groups.length === 0) document.addEventListener('keydown', pressed)
    groups.push(group)
    return () => {
      groups.splice(groups.indexOf(group), 1)
      if (groups.length === 0) document.removeEventListener('keydown', pressed)
    }
  }, [where])
}
