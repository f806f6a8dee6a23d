import { useEffect, useState } from 'react'
import { onChange, onReturn } from '../../api/connection.ts'
import { lackingItems } from './lacking.ts'
import type { LackingItem } from './lackingItem.ts'

/** The page of a report as far as it is here. `turn` counts its versions, so that a frame is loaded again. */
export interface ReportPage {
  readonly items: readonly LackingItem[]
  readonly state: 'reading' | 'here' | 'missing' | 'away'
  readonly turn: number
}

/** Reads a report's page, and again when something that is kept changes. */
export function useReportPage(address: string): ReportPage {
  const [page, setPage] = useState<ReportPage>({ items: [], state: 'reading', turn: 0 })
  useEffect(() => {
    const stop = new AbortController()
    let last = ''
    const read = async (): Promise<void> => {
      try {
        const answer = await fetch(address, { signal: stop.signal })
        const html = answer.ok ? await answer.text() : ''
        if (answer.ok && html === last) return
        last = html
        setPage(({ turn }) => ({ items: lackingItems(html), state: answer.ok ? 'here' : 'missing', turn: turn + 1 }))
      } catch {
        if (!stop.signal.aborted) setPage((before) => ({ ...before, state: before.state === 'here' ? 'here' : 'away' }))
      }
    }
    void read()
    const letGo = [onChange(() => void read()), onReturn(() => void read())]
    return () => {
      stop.abort()
      for (const one of letGo) one()
    }
  }, [address])
  return page
}
