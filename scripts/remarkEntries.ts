// Writes the glossary's remarks out of docs/remarks.md, so that page and documentation say the same.

import { readFileSync, writeFileSync } from 'node:fs'
import { type RemarkKind, remarkKinds, remarkWords } from '../src/core/terms/index.ts'

const page = new URL('../docs/remarks.md', import.meta.url)
const table = new URL('../src/web/glossary/remarkEntries.json', import.meta.url)

/** One remark as the glossary has it. */
export interface RemarkEntry {
  readonly kind: RemarkKind
  readonly words: string
  readonly means: string
  readonly limit: string
  readonly act: string
}

/** The remarks of the documentation, in the order of the program. */
export function remarkEntries(text = readFileSync(page, 'utf8')): readonly RemarkEntry[] {
  const sections = text.split(/^### /m).slice(1)
  return remarkKinds.map((kind) => {
    const section = sections.find((one) => one.startsWith(`${kind}\n`)) ?? ''
    const said = (name: string): string =>
      (new RegExp(`^- ${name}: ([\\s\\S]*?)(?=\\n- |\\n\\n|\\n## |$(?![\\s\\S]))`, 'm').exec(section)?.[1] ?? '')
        .replace(/\s+/g, ' ')
        .replaceAll('`', '')
        .trim()
    return { kind, words: remarkWords[kind].words, means: said('Means'), limit: said('Limit'), act: said('Do') }
  })
}

if (import.meta.main) writeFileSync(table, `${JSON.stringify(remarkEntries(), null, 2)}\n`)
