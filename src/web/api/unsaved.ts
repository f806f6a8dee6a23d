/**
 * What was typed and is not kept yet, one entry for each paper and tab, in the browser's own store: it outlives the tab, the
 * browser and the server, and is sent when the server is there. `after` is the version that the writer had seen.
 */
export interface Unsaved {
  readonly content: unknown
  readonly after: number
  readonly why: string
}

const start = 'kufe:unsaved:'
const lockOf = (tab: string): string => `kufe:tab:${tab}`

/** This tab, also after a reload. */
const tab = sessionStorage.getItem('kufe:tab') ?? crypto.randomUUID()
sessionStorage.setItem('kufe:tab', tab)
// Held as long as the tab lives, so that others know whose entries are left behind.
void navigator.locks?.request(lockOf(tab), () => new Promise(() => undefined))

const place = (address: string, of = tab): string => `${start}${of}:${address}`

export function keepUnsaved(address: string, unsaved: Unsaved): void {
  try {
    localStorage.setItem(place(address), JSON.stringify(unsaved))
  } catch {
    // The browser's store is full or closed: the page still holds it, and says that it is not kept yet.
  }
}

export const forgetUnsaved = (address: string): void => localStorage.removeItem(place(address))

function readAt(key: string): Unsaved | undefined {
  const text = localStorage.getItem(key)
  if (text === null) return undefined
  try {
    return JSON.parse(text) as Unsaved // written by keepUnsaved alone
  } catch {
    return undefined
  }
}

/** What this tab left unsaved, or else what a tab left that is gone; that becomes this tab's. */
export async function takeUnsaved(address: string): Promise<Unsaved | undefined> {
  const own = readAt(place(address))
  if (own !== undefined) return own
  const { held = [] } = (await navigator.locks?.query()) ?? {}
  const alive = new Set(held.map(({ name }) => name))
  for (const key of Object.keys(localStorage)) {
    if (!key.startsWith(start) || !key.endsWith(`:${address}`)) continue
    const other = key.slice(start.length, -address.length - 1)
    if (alive.has(lockOf(other))) continue
    const left = readAt(key)
    localStorage.removeItem(key)
    if (left === undefined) continue
    keepUnsaved(address, left)
    return left
  }
  return undefined
}
