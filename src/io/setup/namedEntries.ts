import { isScalar, type Node, type YAMLMap } from 'yaml'
import type { Spot } from './gathered.ts'
import { joined } from './sectionComplaints.ts'
import { setupProblem } from './setupProblem.ts'

/** One line `name: value` of a map. */
export interface Entry {
  readonly name: string
  readonly keyNode: Node
  readonly valueNode: unknown
}

/** The entries of a map by name. What is no name or stands twice becomes a problem; the first of two counts. */
export function namedEntries(map: YAMLMap | undefined, spot: Spot): ReadonlyMap<string, Entry> {
  const entries = new Map<string, Entry>()
  for (const { key, value } of map?.items ?? []) {
    const keyNode = key as Node
    const name = isScalar(key) && typeof key.value === 'string' ? key.value : ''
    const place = spot.source.place(keyNode, joined(spot.path, name))
    if (name === '') {
      const mend = 'Write the key as a plain word.'
      spot.into.problems.push(setupProblem(place, { kind: 'valueNotPlain', what: 'A key is not plain text.', mend }))
    } else if (entries.has(name)) {
      const what = `${joined(spot.path, name)} stands twice.`
      spot.into.problems.push(setupProblem(place, { kind: 'keyTwice', what, mend: 'Keep one of the two.' }))
    } else {
      entries.set(name, { name, keyNode, valueNode: value })
    }
  }
  return entries
}
