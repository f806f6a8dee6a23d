import type { ChangedEvent } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'

/** How often the history is looked at while a page listens, ms. Other processes write into the lab as well. */
const lookEvery = 500

type Listener = (event: ChangedEvent) => void

/** Tells all listeners what is new in the lab, whoever kept it. */
export function pulseEvents({ held, closing }: ServerDesk): { listen(listener: Listener): () => void } {
  const listeners = new Set<Listener>()
  let timer: ReturnType<typeof setInterval> | undefined
  let looking = false
  const look = async (): Promise<void> => {
    if (looking || timer === undefined) return
    looking = true
    try {
      const news = await held.news()
      if (news.ok) for (const event of news.value) for (const listener of listeners) listener(event)
    } finally {
      looking = false
    }
  }
  const rest = (): void => {
    clearInterval(timer)
    timer = undefined
  }
  closing.addEventListener('abort', rest, { once: true })
  return {
    listen: (listener) => {
      if (timer === undefined) {
        // What happened while nobody listened is no news: a page reads all when it comes.
        void held.news().then(() => {
          if (listeners.size > 0 && !closing.aborted) timer ??= setInterval(() => void look(), lookEvery)
        })
      }
      listeners.add(listener)
      return () => {
        listeners.delete(listener)
        if (listeners.size === 0) rest()
      }
    },
  }
}
