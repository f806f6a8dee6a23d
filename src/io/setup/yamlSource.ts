import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
  type YAMLMap,
} from 'yaml'
import type { Outcome, Place, Problem } from '../../core/terms/index.ts'
import { done, failed } from '../../core/terms/index.ts'
import { setupProblem } from './setupProblem.ts'

/** A setup is a page of text; more than this is another file. Also bounds the time that a hostile text can take. */
const longest = 128 * 1024

/** A parsed YAML text in which every node knows its line. */
export interface YamlSource {
  readonly root: YAMLMap
  /** Place of a node or of an offset into the text. */
  place(at: Node | number | null | undefined, name?: string): Place
  /** The node itself, or the one that an alias stands for. */
  behind(node: unknown): Node | null
}

/** Parses YAML with every plain value kept as the text that stands there. All syntax errors at once; never throws. */
export function yamlSource(text: string, file: string): Outcome<YamlSource> {
  const refused = refusal(text)
  if (refused !== undefined) return failed(setupProblem({ file }, refused))
  const lines = new LineCounter()
  const document = parse(text, lines)
  const place = placer(text, file, lines)
  if (document === undefined) {
    return failed(
      setupProblem(
        { file, line: 1 },
        { kind: 'yamlSyntax', what: 'The text cannot be read as YAML.', mend: 'Write keys and values, one per line.' },
      ),
    )
  }
  if (document.errors.length > 0) return failed(...telling(document.errors).map((error) => syntaxProblem(error, place)))
  if (isBlank(document.contents)) {
    return failed(
      setupProblem(
        { file },
        { kind: 'setupEmpty', what: 'The setup is empty.', mend: 'Start from the text that `kufe setup` prints.' },
      ),
    )
  }
  if (!isMap(document.contents)) {
    return failed(
      setupProblem(place(document.contents as Node), {
        kind: 'sectionExpected',
        what: 'The setup does not consist of keys and values.',
        mend: 'Begin lines with a key and a colon, such as "rig:"; `kufe setup` prints a text to start from.',
      }),
    )
  }
  return done({
    root: document.contents,
    place,
    behind(node) {
      const target = isAlias(node) ? node.resolve(document) : node
      return isNode(target) ? target : null
    },
  })
}

function refusal(text: string): { kind: 'setupTooLong' | 'setupNotText'; what: string; mend: string } | undefined {
  if (text.length > longest) {
    return {
      kind: 'setupTooLong',
      what: `The file holds ${text.length} characters, a setup at most ${longest}.`,
      mend: 'Name the setup file, not the record.',
    }
  }
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what tells that a file is no text.
  if (/[\u0000-\u0008\u000E-\u001F\uFFFD]/.test(text)) {
    return {
      kind: 'setupNotText',
      what: 'The file is not plain UTF-8 text.',
      mend: 'Save the setup as UTF-8 text, or name another file.',
    }
  }
  return undefined
}

function parse(text: string, lineCounter: LineCounter): Document.Parsed | undefined {
  try {
    // Keys that stand twice are found by the reader, which is quicker than the parser on long maps.
    return parseDocument(text, {
      lineCounter,
      schema: 'failsafe',
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: 'error',
    })
  } catch {
    return undefined
  }
}

function placer(text: string, file: string, lines: LineCounter): YamlSource['place'] {
  return (at, name) => {
    const range = typeof at === 'number' ? [at, at] : (at?.range ?? undefined)
    const named = name === undefined ? {} : { name }
    if (range === undefined) return { file, ...named }
    const { line, col } = lines.linePos(range[0])
    const cell = text.slice(range[0], range[1]).trim()
    const shown = cell === '' || cell.includes('\n') ? {} : { cell: cell.length > 80 ? `${cell.slice(0, 79)}…` : cell }
    return { file, line: Math.max(1, line), column: Math.max(1, col), ...named, ...shown }
  }
}

/** Nothing behind the colon, or an empty text. */
export const isBlank = (node: unknown): boolean =>
  node === null || node === undefined || (isScalar(node) && (node.value === '' || node.value === null))

/** The errors that a person can act on: every tab, else the first, of which the others mostly are echoes. */
function telling<E extends { readonly code: string }>(errors: readonly E[]): readonly E[] {
  const tabs = errors.filter(({ code }) => code === 'TAB_AS_INDENT')
  return tabs.length > 0 ? tabs.slice(0, 50) : errors.slice(0, 1)
}

/** What to do about the parser's errors; its own words say what is wrong. */
const syntaxMends: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: 'Indent with blanks instead of tabs.',
  BAD_INDENT: 'Begin keys of one section in the same column.',
  BLOCK_AS_IMPLICIT_KEY: 'Put the value in quotes if it holds a colon and a blank, or begin a new line.',
  MULTIPLE_DOCS: 'Keep one setup in a file: take the line "---" out.',
  MISSING_CHAR: 'Close the quote or bracket that was opened, or write the colon after the key.',
  RESOURCE_EXHAUSTION: 'Write fewer levels.',
}

function syntaxProblem(
  error: { code: string; message: string; pos: [number, number] },
  place: YamlSource['place'],
): Problem {
  const [sentence] = error.message.split(/[\n;]/)
  return setupProblem(place(error.pos[0]), {
    kind: 'yamlSyntax',
    what: `${sentence}.`,
    mend: syntaxMends[error.code] ?? 'Write one "key: value" per line; put text with special signs in quotes.',
  })
}
