import { isMap, isScalar, type Node, type YAMLMap } from 'yaml'
import { nearestWord } from '../../core/quantity/index.ts'
import type { Spot } from './gathered.ts'
import type { Key, Section, Variants } from './keyKinds.ts'
import { type Entry, namedEntries } from './namedEntries.ts'
import { readColumns } from './readColumns.ts'
import { readLeaf } from './readLeaf.ts'
import { joined, missingKey, nearestHint, sectionExpected, unknownKey } from './sectionComplaints.ts'
import { setupKeys } from './setupKeys.ts'
import { type Complaint, setupProblem } from './setupProblem.ts'
import { isBlank } from './yamlSource.ts'

/** A section's spot and the node of its name, where keys that it lacks are reported. */
interface SectionSpot extends Spot {
  readonly named?: Node
}

/** Reads a whole setup into `spot.into`. */
export const readRoot = (root: YAMLMap, spot: Spot): void => readSection(root, setupKeys, spot)

function readSection(map: YAMLMap | undefined, section: Section, spot: SectionSpot): void {
  const entries = namedEntries(map, spot)
  for (const entry of entries.values()) {
    const path = joined(spot.path, entry.name)
    const key = Object.hasOwn(section.keys, entry.name) ? section.keys[entry.name] : undefined
    if (key !== undefined) readKey(key, entry, { ...spot, path })
    else complain({ ...spot, path }, entry.keyNode, unknownKey(entry.name, section, spot.path))
  }
  // A required key that stands there mistyped is told once, as mistyped.
  const meant = new Set([...entries.keys()].map((name) => nearestWord(name, Object.keys(section.keys))))
  for (const [name, key] of Object.entries(section.keys)) {
    if (key.required !== true || entries.has(name) || meant.has(name)) continue
    complain({ ...spot, path: joined(spot.path, name) }, spot.named ?? map, missingKey(name, key, spot.path))
  }
}

function readKey(key: Key, entry: Entry, spot: Spot): void {
  const node = spot.source.behind(entry.valueNode)
  if (key.is === 'quantity' || key.is === 'text' || key.is === 'choice') {
    const place = spot.source.place((isBlank(entry.valueNode) ? entry.keyNode : entry.valueNode) as Node, spot.path)
    const read = readLeaf(key, node)
    if (read.ok) spot.into.values.set(spot.path, { value: read.value, place })
    else spot.into.problems.push(setupProblem(place, read.complaint))
    return
  }
  const map = isMap(node) ? node : undefined
  if (map === undefined && !isBlank(entry.valueNode)) {
    complain(spot, entry.keyNode, sectionExpected(spot.path, key))
    return
  }
  const below = { ...spot, named: entry.keyNode }
  if (key.is === 'section') readSection(map, key, below)
  else if (key.is === 'variants') readVariants(map, key, below)
  else spot.into.columns = readColumns(namedEntries(map, spot), spot)
}

function readVariants(map: YAMLMap | undefined, key: Variants, spot: SectionSpot): void {
  const chosen = map?.items.find((pair) => isScalar(pair.key) && pair.key.value === key.on)
  const node = chosen === undefined ? null : spot.source.behind(chosen.value)
  const word = isScalar(node)
    ? String(node.value ?? '')
        .trim()
        .replace(/\s+/g, ' ')
    : ''
  if (Object.hasOwn(key.variants, word)) {
    readSection(map, key.variants[word], spot)
    return
  }
  const path = joined(spot.path, key.on)
  const mend = nearestHint(word, Object.keys(key.variants), '"')
  if (word === '') {
    const at = (chosen?.key as Node | undefined) ?? spot.named
    complain({ ...spot, path }, at, { kind: 'keyMissing', what: `${path} has no value.`, mend: `Add it. ${mend}` })
  } else {
    complain({ ...spot, path }, chosen?.value as Node, {
      kind: 'choiceUnknown',
      what: `"${word}" is no ${spot.path}.`,
      mend,
    })
  }
}

function complain(spot: Spot, at: Node | undefined | null, complaint: Complaint): void {
  spot.into.problems.push(setupProblem(spot.source.place(at ?? 0, spot.path), complaint))
}
