import { type ReactNode, useEffect } from 'react'
import { go, useAddress } from '../frame/address.ts'
import { useKeys } from '../work/keys.ts'
import { type GuidePage, guidePages } from './pages.ts'

/** The guided demo: walks along the stations, points at one thing on each, and is out of the way. */
export default function Guide({ page }: { readonly page: number }): ReactNode {
  const { study } = useAddress()
  const index = Number.isInteger(page) ? Math.min(guidePages.length, Math.max(1, page)) : 1
  const { title, text, tryIt, points } = guidePages[index - 1]
  usePointer(points)
  const turn = (by: number): void => goTo(index + by)
  useKeys('Guided demo', [
    { key: 'n', words: 'next page of the guide', press: () => turn(index === guidePages.length ? 0 : 1) },
    { key: 'p', words: 'page before', press: () => turn(index === 1 ? 0 : -1) },
  ])
  if (study === null) return null
  return (
    <aside className="guide" aria-label="Guided demo">
      <p className="quiet">
        {index} of {guidePages.length}, about two minutes in all
      </p>
      <h2>{title}</h2>
      <p>{text}</p>
      <p>
        <em>{tryIt}</em>
      </p>
      <p className="guide-tools">
        {index > 1 && (
          <button type="button" onClick={() => turn(-1)}>
            Back
          </button>
        )}
        {index < guidePages.length && (
          <button type="button" onClick={() => turn(1)}>
            Next
          </button>
        )}
        <button type="button" onClick={() => go({ search: { tour: null } })}>
          {index === guidePages.length ? 'Done' : 'Leave the guide'}
        </button>
      </p>
    </aside>
  )
}

function goTo(index: number): void {
  const page: GuidePage | undefined = guidePages[index - 1]
  if (page === undefined) return
  go({ station: page.station, search: { ...page.search, tour: index } })
}

/** Outlines what a page of the guide means, as soon as it is there. */
function usePointer(selector: string | undefined): void {
  useEffect(() => {
    if (selector === undefined) return
    let found: Element | null = null
    const look = (): void => {
      const now = document.querySelector(selector)
      if (now === found) return
      found?.classList.remove('pointed')
      now?.classList.add('pointed')
      if (found === null) now?.scrollIntoView({ block: 'nearest' })
      found = now
    }
    look()
    const timer = setInterval(look, 250)
    return () => {
      clearInterval(timer)
      found?.classList.remove('pointed')
    }
  }, [selector])
}
