import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { run } from '../../src/cli/run.ts'
import { capturedDesk } from '../cli/capturedDesk.ts'

// A regression snapshot: the picture in README.md is what the program draws.
test('docs/pictures/wax.svg is what the program draws', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-picture-'))
  try {
    const drawn = join(folder, 'wax.svg')
    const words = ['reduce', 'examples/lacquer/wax.csv', '--setup', 'examples/lacquer/wax.setup.yaml', '--svg', drawn]
    expect(await run(words, capturedDesk())).toBe(0)
    expect(readFileSync('docs/pictures/wax.svg', 'utf8')).toBe(readFileSync(drawn, 'utf8'))
  } finally {
    rmSync(folder, { recursive: true })
  }
})
