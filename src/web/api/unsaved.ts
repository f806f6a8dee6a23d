/**
 * What was typed and is not kept yet, one entry for each paper, in the browser's own store: it outlives the tab, the browser and
 * the server, and is sent when the server is there. `after` is the version that the writer had seen.
 */
export interface Unsaved {
  readonly content: unknown
  readonly after: number
  readonly why: string
}

const place = (address: string): string => `kufe:unsaved:${address}`

export function keepUnsaved(address: string, unsaved: Unsaved): void {
  try {
    localStorage.setItem(place(address), JSON.stringify(unsaved))
  } catch {
    // The browser's store is full or closed: the page still holds it, and says that it is not kept yet.
  }
}

export const forgetUnsaved = (address: string): void => localStorage.removeItem(place(address))

export function readUnsaved(address: string): Unsaved | undefined {
  const text = localStorage.getItem(place(address))
  if (text === null) return undefined
  try {
    return JSON.parse(text) as Unsaved // written by keepUnsaved alone
  } catch {
    return undefined
  }
}
