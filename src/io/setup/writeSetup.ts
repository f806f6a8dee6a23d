import { Document } from 'yaml'
import { printExact } from '../../core/quantity/index.ts'
import type { Setup } from '../../core/terms/index.ts'
import type { ColumnAnswer, ColumnAnswers } from './columnAnswers.ts'
import { flattenSetup } from './flattenSetup.ts'
import type { Section } from './keyKinds.ts'
import { setupKeys } from './setupKeys.ts'

export interface WriteSetupOptions {
  readonly columns?: ColumnAnswers
  /** Lines of words that stand above the setup. */
  readonly heading?: readonly string[]
  /** Where editors find the JSON Schema, seen from the file. */
  readonly schema?: string
}

type Tree = { [key: string]: Tree | string | number }

/** A setup as YAML that `readSetup` reads back to the same setup, number for number. */
export function writeSetup(setup: Setup, options: WriteSetupOptions = {}): string {
  const tree = sectionTree(setupKeys, '', { flat: flattenSetup(setup), columns: options.columns ?? {} })
  const body = new Document(tree).toString({ lineWidth: 0, indent: 2 })
  const schema = options.schema === undefined ? [] : [`yaml-language-server: $schema=${options.schema}`]
  const comments = [...schema, ...(options.heading ?? [])]
    .flatMap((text) => text.split('\n'))
    .map((line) => `# ${line}\n`)
  return comments.join('') + body
}

interface Content {
  readonly flat: ReadonlyMap<string, number | string>
  readonly columns: ColumnAnswers
}

function sectionTree(section: Section, path: string, content: Content): Tree {
  const { flat, columns } = content
  const tree: Tree = {}
  for (const [name, key] of Object.entries(section.keys)) {
    const inner = path === '' ? name : `${path}.${name}`
    const value = flat.get(inner)
    if (key.is === 'columns') {
      if (Object.keys(columns).length > 0) tree[name] = answerTree(columns)
    } else if (key.is === 'section') {
      const below = sectionTree(key, inner, content)
      if (Object.keys(below).length > 0) tree[name] = below
    } else if (key.is === 'variants') {
      tree[name] = sectionTree(key.variants[String(flat.get(`${inner}.${key.on}`))], inner, content)
    } else if (value !== undefined) {
      tree[name] =
        typeof value === 'string' || key.is !== 'quantity' ? value : plainOrText(printExact(value, key.dimension))
    }
  }
  return tree
}

/** Counts and bare ratios are numbers in YAML too; quantities with a unit are text. */
const plainOrText = (text: string): string | number => (/^-?[\d.]+(e[+-]?\d+)?$/.test(text) ? Number(text) : text)

function answerTree(columns: ColumnAnswers): Tree {
  const word = ({ channel, unit }: ColumnAnswer): Tree => ({
    ...(channel === undefined ? {} : { channel: channel === 'ignore' ? 'none' : channel }),
    ...(unit === undefined ? {} : { unit }),
  })
  return Object.fromEntries(Object.entries(columns).map(([heading, answer]) => [heading, word(answer)]))
}
