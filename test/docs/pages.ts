import { readFileSync } from 'node:fs'
import { filesUnder } from '../../scripts/filesUnder.ts'

/** A fenced block of a page. */
export interface Block {
  readonly page: string
  /** Line of its first fence, from 1. */
  readonly line: number
  readonly language: string
  readonly text: string
  /** True when only blank lines lie between it and the block before. */
  readonly follows: boolean
}

/** The pages that people read, as paths from the project's root. */
export const pages: readonly string[] = [
  'README.md',
  'CONTRIBUTING.md',
  'CHANGELOG.md',
  ...filesUnder('.', 'docs').filter((path) => path.endsWith('.md')),
]

/** All fenced blocks of a page in their order. */
export function blocksOf(page: string): Block[] {
  const blocks: Block[] = []
  let open: { line: number; language: string; text: string[] } | undefined
  let onlyBlanks = false
  for (const [index, line] of readFileSync(page, 'utf8').split('\n').entries()) {
    const fence = /^```(\w*)$/.exec(line)
    if (open === undefined && fence !== null) {
      open = { line: index + 1, language: fence[1], text: [] }
    } else if (open !== undefined && line === '```') {
      blocks.push({ ...open, page, text: `${open.text.join('\n')}\n`, follows: onlyBlanks })
      open = undefined
      onlyBlanks = true
    } else if (open !== undefined) {
      open.text.push(line)
    } else {
      onlyBlanks &&= line.trim() === ''
    }
  }
  if (open !== undefined) throw new Error(`${page}:${open.line}: this block is not closed`)
  return blocks
}
