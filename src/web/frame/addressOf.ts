import { isStation, type StationName } from './stations.ts'

/**
 * Where somebody is. Every state of the bench has such an address, so that it can be linked, reloaded and gone back to:
 * `/` the lab's studies · `/studies/:study/:station` a station · what follows belongs to the station, such as
 * `/studies/runners/read/wax/7` for step 7 of a record. Beside the path: `?lab=rigs` opens the Lab drawer over a station,
 * `?word=lambda` the glossary, `?tour=2` the guided demo; a station may keep its own switches there with `search`.
 */
export interface Address {
  readonly study: string | null
  readonly station: StationName
  /** What follows the station in the path, decoded. */
  readonly rest: readonly string[]
  readonly search: Readonly<Record<string, string>>
  /** True for a path that no page has. */
  readonly unknown: boolean
}

export function addressOf(path: string, query = ''): Address {
  const parts = path.split('/').filter((part) => part !== '')
  const search = Object.fromEntries(new URLSearchParams(query))
  const nowhere = { study: null, station: 'ask', rest: [], search, unknown: parts.length > 0 } as const
  let words: string[]
  try {
    words = parts.map(decodeURIComponent)
  } catch {
    return nowhere
  }
  const [head, study, station = 'ask', ...rest] = words
  if (head !== 'studies' || study === undefined) return nowhere
  return isStation(station) ? { study, station, rest, search, unknown: false } : { ...nowhere, study }
}

/** What to change of the address; what is not named stays within a study, and `rest` falls away with the station. */
export interface Change {
  readonly study?: string | null
  readonly station?: StationName
  readonly rest?: readonly (string | number)[]
  /** Switches to set; null takes one away. */
  readonly search?: Readonly<Record<string, string | number | null>>
}

/** The address as text for a link. */
export function linkFrom(from: Address, change: Change): string {
  const study = change.study === undefined ? from.study : change.study
  const moved = change.study !== undefined || change.station !== undefined
  const rest = change.rest ?? (moved ? [] : from.rest)
  const station = change.station ?? (change.study === undefined ? from.station : 'ask')
  const search = new URLSearchParams(moved || change.rest !== undefined ? kept(from.search) : from.search)
  for (const [key, value] of Object.entries(change.search ?? {})) {
    if (value === null) search.delete(key)
    else search.set(key, String(value))
  }
  const path =
    study === null ? '/' : `/${['studies', study, station, ...rest].map((part) => encodeURIComponent(part)).join('/')}`
  const query = search.toString()
  return query === '' ? path : `${path}?${query}`
}

/** Switches that live on when somebody goes to another place: the guide walks along. */
const kept = (search: Address['search']): Record<string, string> =>
  search.tour === undefined ? {} : { tour: search.tour }
