import { fixtureKeys } from './fixtureKeys.ts'
import type { Key, Section } from './keyKinds.ts'
import { optionKeys } from './optionKeys.ts'
import { liquidKeys, pairKeys } from './pairKeys.ts'
import { rigKeys } from './rigKeys.ts'
import { runKeys } from './runKeys.ts'
import { wornKeys } from './wornKeys.ts'

/**
 * Every key of a setup file. Reader, writer, starter file and JSON Schema are all made from this table, so they
 * cannot disagree.
 */
export const setupKeys: Section = {
  is: 'section',
  about: 'Everything that has to be known beside the raw record, with units as people write them.',
  keys: {
    rig: rigKeys,
    fixture: fixtureKeys,
    pair: pairKeys,
    liquid: liquidKeys,
    run: runKeys,
    worn: wornKeys,
    columns: {
      is: 'columns',
      about:
        'What the columns of the record are, by heading: channel, unit or both. Only for columns that the reader asks about or reads wrongly.',
    },
    options: optionKeys,
  },
}

/** Paths of all keys with this name, such as `fixture.trackRadius`; each path once. */
export function pathsOfKey(name: string): readonly string[] {
  const found = new Set<string>()
  const walk = (key: Key, path: string): void => {
    const below = key.is === 'section' ? [key] : key.is === 'variants' ? Object.values(key.variants) : []
    for (const section of below) {
      for (const [inner, innerKey] of Object.entries(section.keys)) {
        const innerPath = path === '' ? inner : `${path}.${inner}`
        if (inner === name) found.add(innerPath)
        walk(innerKey, innerPath)
      }
    }
  }
  walk(setupKeys, '')
  return [...found]
}
