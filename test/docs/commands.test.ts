import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { commandsOf, matchesOutput } from './commands.ts'
import { notRun } from './notRun.ts'
import { blocksOf, pages } from './pages.ts'

/** Blocks of the shell that call Kufe, each with the output that the page shows right after it. */
const examples = pages.map((page) => {
  const blocks = blocksOf(page)
  return {
    page,
    blocks: blocks.flatMap((block, index) => {
      const commands = block.language === 'sh' ? commandsOf(block.text) : []
      if (!commands.some(({ text }) => text.startsWith('kufe '))) return []
      const next = blocks.at(index + 1)
      const shown = next?.language === 'text' && next.follows ? next.text : undefined
      return [{ place: `${page}:${block.line}`, commands, shown }]
    }),
  }
})

const skippedBecause = (text: string): string | undefined =>
  notRun.find(({ command }) => text.startsWith(command))?.reason

describe.for(examples.filter(({ blocks }) => blocks.length > 0))('commands of $page', ({ blocks }) => {
  let folder: string

  // The commands of a page build on each other, as a reader would type them, beside a copy of the examples.
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kufe-docs-'))
    if (existsSync('examples')) cpSync('examples', join(folder, 'examples'), { recursive: true })
  })

  afterAll(() => rmSync(folder, { recursive: true }))

  test.for(blocks)('$place', ({ commands, shown }, { skip }) => {
    const kufe = `kufe() { "${process.execPath}" "${join(process.cwd(), 'bin/kufe.mjs')}" "$@"; }`
    let output = ''
    for (const { text, exits } of commands) {
      const reason = skippedBecause(text)
      if (reason !== undefined) skip(reason)
      const { status, stdout, stderr } = spawnSync('bash', ['-c', `${kufe}\n${text}`], {
        cwd: folder,
        env: { ...process.env, HOME: folder, XDG_CONFIG_HOME: undefined, KUFE_HOME: undefined }, // leave no trace at home
        encoding: 'utf8',
      })
      expect(status, `${text}\n${stderr}`).toBe(exits)
      output += stdout
    }
    if (shown !== undefined)
      expect(matchesOutput(output, shown), `the page shows\n${shown}\nand it is\n${output}`).toBe(true)
  })
})

test('every exception from running is still needed and says why', () => {
  const texts = examples.flatMap(({ blocks }) => blocks.flatMap(({ commands }) => commands.map(({ text }) => text)))
  for (const { command, reason } of notRun) {
    expect(
      texts.filter((text) => text.startsWith(command)),
      command,
    ).not.toEqual([])
    expect(reason.length).toBeGreaterThan(10)
  }
})
