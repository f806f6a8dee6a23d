import { nearestWord } from '../../core/quantity/index.ts'
import type { ColumnsKey, Key, Section, Variants } from './keyKinds.ts'
import { pathsOfKey } from './setupKeys.ts'
import type { Complaint } from './setupProblem.ts'

/** `trackRadius` below `fixture` as a path; the root has the path "". */
export const joined = (path: string, name: string): string => (path === '' ? name : `${path}.${name}`)

/** `Did you mean "trackRadius"? Known are …`, or only the list when nothing is near. */
export function nearestHint(word: string, known: readonly string[], quote = ''): string {
  const nearest = nearestWord(word, known)
  const list = known.map((name) => `${quote}${name}${quote}`).join(', ')
  return nearest === undefined ? `Known are ${list}.` : `Did you mean "${nearest}"? Known are ${list}.`
}

/** A key that the section has not; a key of another section is sent there. */
export function unknownKey(name: string, section: Section, path: string): Complaint {
  const known = Object.keys(section.keys)
  const elsewhere = pathsOfKey(name).filter((other) => other !== joined(path, name))
  const move =
    nearestWord(name, known) === undefined && elsewhere.length > 0
      ? `Move it to ${elsewhere.slice(0, 3).join(' or ')}. `
      : ''
  const where = path === '' ? 'a setup' : path
  return { kind: 'keyUnknown', what: `"${name}" is no key of ${where}.`, mend: move + nearestHint(name, known) }
}

/** A required key that is not there. */
export function missingKey(name: string, key: Key, path: string): Complaint {
  const leaf = key.is === 'quantity' || key.is === 'text' || key.is === 'choice'
  const example = leaf ? `"${name}: ${key.example}"` : `"${name}:"`
  return { kind: 'keyMissing', what: `${joined(path, name)} is missing.`, mend: `Add ${example}. ${key.about}` }
}

/** A value or nothing where keys belong. */
export function sectionExpected(path: string, key: Section | Variants | ColumnsKey): Complaint {
  const inner =
    key.is === 'section' ? Object.keys(key.keys) : key.is === 'variants' ? [key.on] : ['a heading of the record']
  return {
    kind: 'sectionExpected',
    what: `${path} holds no keys.`,
    mend: `Write its keys on the next lines, indented: ${inner.join(', ')}.`,
  }
}
