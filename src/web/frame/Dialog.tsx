import { type ReactNode, useEffect, useId, useRef } from 'react'

interface DialogProps {
  readonly title: string
  readonly close: () => void
  /** At the side, over the page but not in its way. */
  readonly aside?: boolean
  readonly children: ReactNode
}

/** A page over the page: takes the focus (what bears `data-first` before all else) and gives it back, Escape closes it. */
export function Dialog({ title, close, aside = false, children }: DialogProps): ReactNode {
  const place = useRef<HTMLDialogElement>(null)
  const id = useId()
  useEffect(() => {
    const dialog = place.current
    const before = document.activeElement
    if (dialog !== null && !dialog.open) dialog.showModal()
    dialog?.querySelector<HTMLElement>('[data-first]')?.focus()
    return () => {
      dialog?.close()
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])
  return (
    <dialog
      ref={place}
      className={aside ? 'over aside' : 'over'}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault()
        close()
      }}
    >
      <header>
        <h2 id={id}>{title}</h2>
        <button type="button" onClick={close}>
          Close
        </button>
      </header>
      {children}
    </dialog>
  )
}
