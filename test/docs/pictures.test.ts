import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { run } from '../../src/cli/run.ts'
import { capturedDesk } from '../cli/capturedDesk.ts'

const lacquers = ['lacquer A=examples/lacquer/lacquer-a-[1-3].csv', 'lacquer B=examples/lacquer/lacquer-b-*.csv']

// Regression snapshots: the pictures in README.md are what the program draws.
test.for([
  { name: 'wax', words: ['reduce', 'examples/lacquer/wax.csv', '--setup', 'examples/lacquer/wax.setup.yaml'] },
  { name: 'lacquers', words: ['compare', ...lacquers] },
])('the picture of $name in docs/pictures is what the program draws', async ({ name, words }) => {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-picture-'))
  try {
    const drawn = join(folder, `${name}.svg`)
    expect(await run([...words, '--svg', drawn], capturedDesk())).toBe(0)
    expect(readFileSync(`docs/pictures/${name}.svg`, 'utf8')).toBe(readFileSync(drawn, 'utf8'))
  } finally {
    rmSync(folder, { recursive: true })
  }
})
