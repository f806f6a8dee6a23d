import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/** The program as people start it. */
const kufe = (words: readonly string[], shell?: string) =>
  spawnSync(
    shell === undefined ? process.execPath : 'sh',
    shell === undefined ? ['bin/kufe.mjs', ...words] : ['-c', shell],
    {
      encoding: 'utf8',
      env: { ...process.env, NO_COLOR: '1' },
    },
  )

test('--help and --version', () => {
  expect(kufe(['--help'])).toMatchObject({ status: 0, stderr: '' })
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'))
  expect(kufe(['--version']).stdout).toBe(`kufe ${version}\n`)
})

test('the exit code reaches the shell, problems stand on standard error', () => {
  const { status, stdout, stderr } = kufe(['reduce', 'no-such-file.csv', '--setup', 'examples/lacquer/wax.setup.yaml'])
  expect(status).toBe(3)
  expect(stdout).toBe('')
  expect(stderr).toMatch(/^kufe: no-such-file\.csv/)
})

test('one JSON document on standard output, no colours in a pipe, no progress where nobody watches', () => {
  const { status, stdout, stderr } = kufe([
    'reduce',
    'examples/lacquer/wax.csv',
    '-s',
    'examples/lacquer/wax.setup.yaml',
    '--json',
  ])
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  expect(JSON.parse(stdout).origin.program).toMatch(/^kufe \d/)
})

test('a reader that leaves early is no fault', () => {
  const { status, stderr } = kufe([], `"${process.execPath}" bin/kufe.mjs --help | head -n 1`)
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
})
