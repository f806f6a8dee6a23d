import { isMap, isScalar, type Node } from 'yaml'
import { parseQuantity } from '../../core/quantity/index.ts'
import {
  done,
  failed,
  type OrderedSheet,
  type Outcome,
  type SheetAnswer,
  type SheetCheck,
} from '../../core/terms/index.ts'
import type { Gathered } from '../setup/gathered.ts'
import { namedEntries } from '../setup/namedEntries.ts'
import { nearestHint } from '../setup/sectionComplaints.ts'
import { type Complaint, setupProblem } from '../setup/setupProblem.ts'
import { yamlSource } from '../setup/yamlSource.ts'

/**
 * Reads the answers to a run sheet, YAML or JSON: `forceZero: 2 mN`, `mount: yes`, or with a note
 * `scar: { value: 0.15 mm, note: oval }`. All problems at once, each with its line. Never throws on bad input.
 */
export function readAnswers(text: string, fileName: string, sheet: OrderedSheet): Outcome<readonly SheetAnswer[]> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  const entries = namedEntries(source.value.root, { source: source.value, into: gathered, path: '' })
  const checks = checksOf(sheet)
  const answers: SheetAnswer[] = []
  for (const { name, keyNode, valueNode } of entries.values()) {
    const complain = (at: Node, complaint: Complaint) =>
      gathered.problems.push(setupProblem(source.value.place(at, name), complaint))
    const check = checks.get(name)
    if (check === undefined) {
      const what = `"${name}" is no check of this run sheet.`
      complain(keyNode, { kind: 'keyUnknown', what, mend: nearestHint(name, [...checks.keys()]) })
      continue
    }
    const node = source.value.behind(valueNode)
    const inner = isMap(node) ? source.value.behind(node.get('value', true)) : node
    const note = isMap(node) ? node.get('note') : undefined
    const strange = isMap(node) ? node.items.find(({ key }) => !/^(value|note)$/.test(String(key))) : undefined
    if (strange !== undefined) {
      const what = `"${String(strange.key)}" is none of value and note.`
      complain(keyNode, {
        kind: 'keyUnknown',
        what,
        mend: 'Put a note with a comma into quotes: note: "oval, along the track".',
      })
      continue
    }
    const read = readValue(isScalar(inner) ? String(inner.value ?? '').trim() : '', check)
    if (!read.ok) complain(inner ?? keyNode, read.complaint)
    else answers.push({ id: name, value: read.value, ...(note === undefined ? {} : { note: String(note) }) })
  }
  return gathered.problems.length > 0 ? failed(...gathered.problems) : done(answers)
}

const checksOf = (sheet: OrderedSheet): ReadonlyMap<string, SheetCheck> =>
  new Map(
    sheet.parts.flatMap(({ entries }) =>
      entries.flatMap(({ id, check }) => (check === null ? [] : [[id, check] as const])),
    ),
  )

type ReadValue =
  | { readonly ok: true; readonly value: number | boolean | null }
  | { readonly ok: false; readonly complaint: Complaint }

/** An empty value is an open check. */
function readValue(text: string, { dimension, accept }: SheetCheck): ReadValue {
  if (text === '') return { ok: true, value: null }
  if (dimension === 'yes') {
    if (/^(yes|true|ok)$/i.test(text)) return { ok: true, value: true }
    if (/^(no|false)$/i.test(text)) return { ok: true, value: false }
    return {
      ok: false,
      complaint: { kind: 'choiceUnknown', what: `"${text}" is neither yes nor no.`, mend: 'Write yes or no.' },
    }
  }
  const parsed = parseQuantity(text, dimension)
  if (parsed.ok) return { ok: true, value: parsed.value }
  const { what, mend } = parsed
  return { ok: false, complaint: { kind: 'quantityUnreadable', what, mend: `${mend} The sheet wants ${accept}.` } }
}
