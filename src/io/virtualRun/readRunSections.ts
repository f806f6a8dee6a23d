import { isMap, isScalar, type Node, YAMLMap } from 'yaml'
import type { Spot } from '../setup/gathered.ts'
import type { Key, Section, Variants } from '../setup/keyKinds.ts'
import { type Entry, namedEntries } from '../setup/namedEntries.ts'
import { readLeaf } from '../setup/readLeaf.ts'
import { readRoot } from '../setup/readSection.ts'
import { joined, missingKey, nearestHint, sectionExpected, unknownKey } from '../setup/sectionComplaints.ts'
import { type Complaint, setupProblem } from '../setup/setupProblem.ts'
import { isBlank } from '../setup/yamlSource.ts'
import { virtualRunKeys } from './virtualRunKeys.ts'

/** Where a section is named; what it lacks is reported there. */
interface NamedSpot extends Spot {
  readonly sections: OwnSections
  readonly named?: Node
}

/** Sections that a kind of file has beside those of a setup. */
export interface OwnSections {
  readonly keys: Section
  /** What such a file is called, for what is none of its keys. */
  readonly called: string
  /** Why `columns`, a key of setups, is none of its keys. */
  readonly withoutColumns: string
}

const ofVirtualRuns: OwnSections = {
  keys: virtualRunKeys,
  called: 'a virtual run',
  withoutColumns: 'Take it out: the setup that is written beside the record says it.',
}

/**
 * Reads a whole virtual run, or another file that holds a setup and more, into `spot.into`: the sections of a setup by the
 * reader of setups, its own by their table. There is no record yet, so `columns` is none of its keys.
 */
export function readRunSections(root: YAMLMap, spot: Spot, sections: OwnSections = ofVirtualRuns): void {
  const own = new YAMLMap()
  const setup = new YAMLMap()
  own.range = root.range
  setup.range = root.range
  for (const pair of root.items) {
    const name = isScalar(pair.key) ? String(pair.key.value) : ''
    if (Object.hasOwn(sections.keys.keys, name) || name === 'columns') own.items.push(pair)
    else setup.items.push(pair)
  }
  readRoot(setup, spot)
  readSection(own, sections.keys, { ...spot, sections })
}

/** Reads the sections of a file that holds no setup, by their table. */
export const readSections = (root: YAMLMap, spot: Spot, sections: OwnSections): void =>
  readSection(root, sections.keys, { ...spot, sections })

function readSection(map: YAMLMap | undefined, section: Section, spot: NamedSpot): void {
  const entries = namedEntries(map, spot)
  for (const entry of entries.values()) {
    const path = joined(spot.path, entry.name)
    const key = Object.hasOwn(section.keys, entry.name) ? section.keys[entry.name] : undefined
    if (key !== undefined) readKey(key, entry, { ...spot, path })
    else complain({ ...spot, path }, entry.keyNode, strangeKey(entry.name, section, spot))
  }
  for (const [name, key] of Object.entries(section.keys)) {
    if (key.required !== true || entries.has(name)) continue
    complain({ ...spot, path: joined(spot.path, name) }, spot.named ?? map, missingKey(name, key, spot.path))
  }
}

function readKey(key: Key, entry: Entry, spot: NamedSpot): void {
  const node = spot.source.behind(entry.valueNode)
  if (key.is === 'quantity' || key.is === 'text' || key.is === 'choice') {
    const at = isBlank(entry.valueNode) ? entry.keyNode : (entry.valueNode as Node)
    const read = readLeaf(key, node)
    if (read.ok) spot.into.values.set(spot.path, { value: read.value, place: spot.source.place(at, spot.path) })
    else complain(spot, at, read.complaint)
    return
  }
  const map = isMap(node) ? node : undefined
  if (map === undefined && !isBlank(entry.valueNode)) {
    complain(spot, entry.keyNode, sectionExpected(spot.path, key))
  } else if (key.is === 'section') {
    readSection(map, key, { ...spot, named: entry.keyNode })
  } else if (key.is === 'variants') {
    readVariants(map, key, { ...spot, named: entry.keyNode })
  }
}

function readVariants(map: YAMLMap | undefined, key: Variants, spot: NamedSpot): void {
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
  const at = word === '' ? ((chosen?.key as Node | undefined) ?? spot.named) : (chosen?.value as Node)
  const wrong: Complaint =
    word === ''
      ? { kind: 'keyMissing', what: `${path} has no value.`, mend: `Add it. ${mend}` }
      : { kind: 'choiceUnknown', what: `"${word}" is no kind of ${spot.path}.`, mend }
  complain({ ...spot, path }, at, wrong)
}

function strangeKey(name: string, section: Section, { path, sections }: NamedSpot): Complaint {
  if (path !== '') return unknownKey(name, section, path)
  return { kind: 'keyUnknown', what: `"${name}" is no key of ${sections.called}.`, mend: sections.withoutColumns }
}

function complain(spot: Spot, at: Node | undefined | null, complaint: Complaint): void {
  spot.into.problems.push(setupProblem(spot.source.place(at ?? 0, spot.path), complaint))
}
