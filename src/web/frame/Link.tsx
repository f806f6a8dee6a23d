import type { ComponentProps, MouseEvent, ReactNode } from 'react'
import { go, useAddress } from './address.ts'
import { type Change, linkFrom } from './addressOf.ts'

type LinkProps = Omit<ComponentProps<'a'>, 'href'> & { readonly to: Change; readonly children: ReactNode }

/** A link within the bench: a real address to copy or open in a new tab, followed without a reload. */
export function Link({ to, onClick, children, ...others }: LinkProps): ReactNode {
  const address = useAddress()
  const href = linkFrom(address, to)
  const follow = (event: MouseEvent<HTMLAnchorElement>): void => {
    onClick?.(event)
    if (event.defaultPrevented || event.button !== 0) return
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return
    event.preventDefault()
    go(href)
  }
  return (
    <a {...others} href={href} onClick={follow}>
      {children}
    </a>
  )
}
