import { type Document, isMap, isScalar, LineCounter, parseDocument } from 'yaml'
import { done, failed, type Outcome, type Place, type Problem } from '../../core/terms/index.ts'

/** All that can be wrong with a file of texts. */
export type TextsProblemKind = 'textsTooLong' | 'textsSyntax' | 'textsNotNamed'

/** A text of people under a name, and where its name stands. */
export interface NamedText {
  readonly name: string
  readonly text: string
  readonly place: Place
}

/** Some pages; also bounds the time that a hostile text can take. */
const longest = 256 * 1024

/** Reads texts under names, one a line or a block: YAML whose values are plain texts. All problems at once; never throws. */
export function readTexts(text: string, file: string): Outcome<readonly NamedText[]> {
  if (text.length > longest) return failed(problem('textsTooLong', { file }))
  const lines = new LineCounter()
  const document = parsed(text, lines)
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset)
    return { file, line, column: col }
  }
  if (document === undefined) return failed(problem('textsSyntax', { file }))
  const errors = document.errors.map(({ pos }) => problem('textsSyntax', at(pos[0])))
  if (errors.length > 0) return failed(...errors)
  const root = document.contents
  if (root === null) return done([])
  if (!isMap(root)) return failed(problem('textsNotNamed', { file, line: 1 }))
  const texts: NamedText[] = []
  const problems: Problem[] = []
  for (const { key, value } of root.items) {
    const place = at(isScalar(key) ? (key.range?.[0] ?? 0) : 0)
    const [name, said] = [key, value].map((node) => (isScalar(node) ? String(node.value ?? '') : undefined))
    if (name === undefined || (said === undefined && value !== null)) problems.push(problem('textsNotNamed', place))
    else texts.push({ name, text: (said ?? '').trim(), place: { ...place, name } })
  }
  return problems.length > 0 ? failed(...problems) : done(texts)
}

/** Everything stays the text that stands there: neither "yes" nor "12" becomes something else. */
function parsed(text: string, lineCounter: LineCounter): Document | undefined {
  try {
    return parseDocument(text.replace(/^\uFEFF/, ''), { schema: 'failsafe', lineCounter, uniqueKeys: true })
  } catch {
    return undefined
  }
}

const words = {
  textsTooLong: { what: 'This is more than some pages of text.', mend: 'Name the file that holds the notes alone.' },
  textsSyntax: {
    what: 'The text cannot be read as YAML here.',
    mend: 'Write "name: text", one per line; put a text with a colon in it into quotes.',
  },
  textsNotNamed: { what: 'This is no text under a name.', mend: 'Write "name: text", one per line.' },
} as const

const problem = (kind: TextsProblemKind, place: Place): Problem => ({
  kind,
  class: 'badInput',
  place,
  ...words[kind],
})
