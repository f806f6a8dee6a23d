import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

let root: string

/** Stands in for npm: installs the one package of the lock file, and an optional one never. */
const npm = `
import { appendFileSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
appendFileSync('calls', process.argv.slice(2).join(' ') + '\\n')
console.log('added 1 package')
if (process.env.NPM_FAILS) process.exit(7)
mkdirSync('node_modules/node/bin', { recursive: true })
mkdirSync('node_modules/one', { recursive: true })
const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'))
const installed = { packages: { 'node_modules/one': packages['node_modules/one'] } }
writeFileSync('node_modules/.package-lock.json', JSON.stringify(installed))
try { symlinkSync(process.execPath, 'node_modules/node/bin/node') } catch {}
`

const lock = (version: string): void =>
  writeFileSync(
    join(root, 'package-lock.json'),
    JSON.stringify({ packages: { '': {}, 'node_modules/one': { version }, 'node_modules/two': { optional: true } } }),
  )

const installs = (): number =>
  existsSync(join(root, 'calls')) ? readFileSync(join(root, 'calls'), 'utf8').trim().split('\n').length : 0

function ready(args: readonly string[], more: Record<string, string> = {}) {
  const env = { ...process.env, npm_execpath: join(root, 'npm.mjs'), ...more }
  return spawnSync(process.execPath, [join(root, 'scripts', 'ready.mjs'), ...args], { encoding: 'utf8', env })
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'kufe-ready-'))
  mkdirSync(join(root, 'scripts'))
  cpSync('scripts/ready.mjs', join(root, 'scripts', 'ready.mjs'))
  writeFileSync(join(root, 'npm.mjs'), npm)
  writeFileSync(
    join(root, 'program.mjs'),
    `process.stdout.write(JSON.stringify([process.argv.slice(2), process.env.PATH])); process.exitCode = 3`,
  )
  lock('1.0.0')
})

afterEach(() => rmSync(root, { recursive: true }))

test('installs once, then starts the program with its words, its exit code and our packages first in the path', () => {
  const first = ready(['program.mjs', '--seed', '7'])
  const [args, path] = JSON.parse(first.stdout) // npm's own words must not be among it
  expect(args).toEqual(['--seed', '7'])
  expect(path.startsWith(join(root, 'node_modules', '.bin'))).toBe(true)
  expect(first.status).toBe(3)
  expect(first.stderr).toContain('Installing the packages')
  expect(ready(['program.mjs']).stderr).toBe('')
  expect(installs()).toBe(1)
  expect(readFileSync(join(root, 'calls'), 'utf8')).toMatch(/^ci /)
})

test.for<[what: string, disturb: () => void]>([
  ['the lock file asks for another version', () => lock('1.0.1')],
  ['a package is gone', () => rmSync(join(root, 'node_modules', 'one'), { recursive: true })],
  ['the pinned Node is gone', () => rmSync(join(root, 'node_modules', 'node'), { recursive: true })],
  ['an earlier try was broken off', () => rmSync(join(root, 'node_modules', '.package-lock.json'))],
])('installs again when %s', ([, disturb]) => {
  ready([])
  disturb()
  ready([])
  ready([])
  expect(installs()).toBe(2)
})

test('says what to do when npm fails, and starts nothing', () => {
  const { status, stdout, stderr } = ready(['program.mjs'], { NPM_FAILS: '1' })
  expect({ status, stdout }).toEqual({ status: 1, stdout: '' })
  expect(stderr).toContain('Check the network and the disk, then try again.')
})

test('says so when npm ends well but did not run the script that brings Node', () => {
  writeFileSync(join(root, 'npm.mjs'), '')
  const { status, stderr } = ready(['program.mjs'])
  expect(status).toBe(1)
  expect(stderr).toContain('Allow npm to run install scripts')
})

test('takes the npm on the path when it was not started by npm', () => {
  mkdirSync(join(root, 'bin'))
  writeFileSync(join(root, 'bin', 'npm'), `#!/bin/sh\nexec "${process.execPath}" "${root}/npm.mjs" "$@"\n`, {
    mode: 0o755,
  })
  const { status } = ready([], { npm_execpath: '', PATH: `${join(root, 'bin')}:${process.env.PATH}` })
  expect({ status, installs: installs() }).toEqual({ status: 0, installs: 1 })
})
