import { isScalar, type Node } from 'yaml'
import { parseQuantity, printQuantity } from '../../core/quantity/index.ts'
import { type ChoiceKey, isWithin, type QuantityKey, rangeInWords, type TextKey } from './keyKinds.ts'
import { nearestHint } from './sectionComplaints.ts'
import type { Complaint } from './setupProblem.ts'
import { isBlank } from './yamlSource.ts'

export type ReadLeaf =
  | { readonly ok: true; readonly value: number | string }
  | { readonly ok: false; readonly complaint: Complaint }

const longestText = 2000

/** The value of a key that holds no further keys: a quantity in SI, a text or a word of a list. */
export function readLeaf(key: QuantityKey | TextKey | ChoiceKey, node: Node | null): ReadLeaf {
  if (isBlank(node)) {
    return complaint(
      'valueMissing',
      'There is no value.',
      `Write a value, such as "${key.example}", or take the key out.`,
    )
  }
  if (!isScalar(node)) {
    return complaint(
      'valueNotPlain',
      'There are keys or a list where one value belongs.',
      `Write one value, such as "${key.example}".`,
    )
  }
  const text = String(node.value).trim()
  if (text.length > longestText) {
    return complaint(
      'valueNotPlain',
      `The value has ${text.length} characters, at most ${longestText} are read.`,
      'Shorten it.',
    )
  }
  if (key.is === 'text') return { ok: true, value: text }
  return key.is === 'quantity' ? readQuantity(key, text) : readChoice(key, text)
}

function readQuantity(key: QuantityKey, text: string): ReadLeaf {
  const parsed = parseQuantity(text, key.dimension)
  if (!parsed.ok) return complaint('quantityUnreadable', parsed.what, parsed.mend)
  if (isWithin(parsed.value, key.range)) return { ok: true, value: parsed.value }
  const share = key.dimension === 'ratio' && parsed.unit.text === '1' && key.example.includes('%')
  const hint = share
    ? ` A number without % is a share: ${text} is ${printQuantity(parsed.value, 'ratio', { unit: '%' })}.`
    : ''
  return complaint(
    'valueOutOfRange',
    `"${text}" lies outside what is possible.`,
    `Write a value of ${rangeInWords(key)}.${hint}`,
  )
}

function readChoice(key: ChoiceKey, text: string): ReadLeaf {
  const word = text.replace(/\s+/g, ' ')
  if (key.choices.includes(word)) return { ok: true, value: word }
  return complaint('choiceUnknown', `"${word}" is not known here.`, nearestHint(word, key.choices, '"'))
}

const complaint = (kind: Complaint['kind'], what: string, mend: string): ReadLeaf => ({
  ok: false,
  complaint: { kind, what, mend },
})
