import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fixtureWords } from '../../../src/bench/index.ts'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-verbs-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk()
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

describe('setup', () => {
  test.for([...fixtureWords])('the starter for %s holds together', async (kind) => {
    const file = join(folder, `${kind}.yaml`)
    const { code, out } = await kufe('setup', kind, '--out', file)
    expect(code).toBe(0)
    expect(out).toContain(`kufe setup --check ${file}`)
    expect(readFileSync(file, 'utf8')).toMatch(/^# yaml-language-server: \$schema=.*schema\/setup\.schema\.json\n/)
    const checked = await kufe('setup', '--check', file)
    expect({ code: checked.code, err: checked.err }).toEqual({ code: 0, err: '' })
    expect(checked.out).toContain('holds together')
    expect(checked.out).toMatch(/lever arm [\d.]+ mm, load factor 1/)
  })

  test('on standard output where no file is named', async () => {
    const { code, out } = await kufe('setup', 'ring-on-plate')
    expect(code).toBe(0)
    expect(out).toContain('kind: ring on plate')
  })

  test('every fixture is named in the help', async () => {
    const { out } = await kufe('setup', '--help')
    for (const word of fixtureWords) expect(out).toContain(word)
  })

  test('a file that is there is kept, unless --force', async () => {
    const file = join(folder, 'mine.yaml')
    writeFileSync(file, 'mine')
    const refused = await kufe('setup', 'ring-on-plate', '-o', file)
    expect(refused.code).toBe(2)
    expect(refused.err).toContain('--force')
    expect(readFileSync(file, 'utf8')).toBe('mine')
    expect((await kufe('setup', 'ring-on-plate', '-o', file, '--force')).code).toBe(0)
    expect(readFileSync(file, 'utf8')).not.toBe('mine')
  })

  test.for([
    { words: ['setup'], says: 'Choose one of balls-on-plate' },
    { words: ['setup', 'ring-on-plat'], says: 'Did you mean ring-on-plate?' },
    { words: ['setup', 'constructor'], says: 'Choose one of' },
  ])('wrong use: $words', async ({ words, says }) => {
    const { code, err } = await kufe(...words)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })

  test('a wrong setup: all its mistakes with their lines, 3, and the same as JSON', async () => {
    const file = join(folder, 'wrong.yaml')
    writeFileSync(file, 'fixture:\n  kind: balls on plat\npair:\n  uper: { name: a }\n')
    const { code, err } = await kufe('setup', '--check', file)
    expect(code).toBe(3)
    expect(err).toContain('wrong.yaml:2:')
    expect(err).toContain('wrong.yaml:4:')
    const json = await kufe('setup', '--check', file, '--json')
    expect(JSON.parse(json.out).error.problems.length).toBeGreaterThanOrEqual(2)
  })
})

describe('demo', () => {
  test('says that all is invented, what to look at, and writes whole files', async () => {
    const out = join(folder, 'demo')
    const shown = await kufe('demo', 'lacquer-a-tilted', '--out', out)
    expect({ code: shown.code, err: shown.err }).toEqual({ code: 0, err: '' })
    expect(shown.out).toMatch(/^These records are invented/)
    expect(shown.out).toContain('swing with every turn')
    expect(shown.out).toContain('--setup examples/lacquer/lacquer-a-tilted.setup.yaml')
    expect(readdirSync(out).sort()).toEqual(['lacquer-a-tilted.json', 'lacquer-a-tilted.svg'])
  })

  test('as JSON a list of results', async () => {
    const { out } = await kufe('demo', 'wax', 'lacquer-a-1', '--json')
    const documents = JSON.parse(out)
    expect(documents.map(({ record }: { record: { file: string } }) => record.file)).toEqual([
      'lacquer-a-1.csv',
      'wax.csv',
    ])
  })

  test('an unknown name', async () => {
    const { code, err } = await kufe('demo', 'waxx')
    expect(code).toBe(2)
    expect(err).toContain('Did you mean wax?')
  })
})

describe('simulate', () => {
  test('a record with its truth and a setup that reduces it', async () => {
    const made = await kufe('simulate', '--out', folder, '--name', 'trial', '--seed', '5', '--json')
    expect(made.code).toBe(0)
    const { record, setup, truth } = JSON.parse(made.out)
    for (const file of [record, setup, truth]) expect(existsSync(file)).toBe(true)
    const reduced = await kufe('reduce', record, '--setup', setup, '--draws', '100', '--json')
    expect({ code: reduced.code, err: reduced.err }).toEqual({ code: 0, err: '' })
    const again = await kufe('simulate', '--out', folder, '--name', 'trial')
    expect(again.code).toBe(2)
    expect(again.err).toContain('--force')
  })
})

describe('fit', () => {
  test('parameters, features, rivals, why it stopped; JSON is that of reduce', async () => {
    const words = ['examples/lacquer/wax.csv', '--setup', 'examples/lacquer/wax.setup.yaml', '--draws', '100']
    const shown = await kufe('fit', ...words)
    expect({ code: shown.code, err: shown.err }).toEqual({ code: 0, err: '' })
    for (const title of ['Parameters', 'Features', 'Rivals', 'How sure']) expect(shown.out).toContain(`\n${title}\n`)
    expect(shown.out).toMatch(/The fit (converged|ended|stopped)/)
    expect((await kufe('fit', ...words, '--json')).out).toBe((await kufe('reduce', ...words, '--json')).out)
  })
})

test('completion prints a script', async () => {
  const { code, out } = await kufe('completion', 'fish')
  expect(code).toBe(0)
  expect(out).toContain('complete -c kufe')
})
