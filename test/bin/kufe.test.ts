import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

let root: string

/** Makes this Node look like an older one to the program. */
const older = `data:text/javascript,Object.defineProperty(process.versions,'node',{value:'20.20.2'})`

function kufe(args: readonly string[], options: readonly string[] = []) {
  return spawnSync(process.execPath, [...options, join(root, 'bin', 'kufe.mjs'), ...args], { encoding: 'utf8' })
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'kufe-bin-'))
  mkdirSync(join(root, 'bin'))
  mkdirSync(join(root, 'src', 'cli'), { recursive: true })
  cpSync('bin/kufe.mjs', join(root, 'bin', 'kufe.mjs'))
  writeFileSync(join(root, 'src', 'cli', 'main.ts'), 'const n: number = process.argv.length\nprocess.exitCode = n')
})

afterEach(() => rmSync(root, { recursive: true }))

test('starts the command line and keeps its compiled code for the next start', () => {
  expect(kufe(['one', 'two']).status).toBe(4)
  expect(readdirSync(join(root, 'node_modules', '.cache', 'kufe'))).not.toEqual([])
})

test('under an older Node says in one line what to do', () => {
  const { status, stdout, stderr } = kufe(['--help'], ['--import', older])
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
  expect(stderr).toMatch(/^kufe needs Node 24 or newer and this is v[\d.]+: run "npm ci" in .*\n$/)
  expect(stderr.trim().split('\n')).toHaveLength(1)
  expect(existsSync(join(root, 'node_modules'))).toBe(false)
})

test('under an older Node hands over to the one that the project brought, with its words and its exit code', () => {
  mkdirSync(join(root, 'node_modules', 'node', 'bin'), { recursive: true })
  const stand = `#!/bin/sh\nshift\necho "given $*"\nexit 5\n`
  writeFileSync(join(root, 'node_modules', 'node', 'bin', 'node'), stand, { mode: 0o755 })
  const { status, stdout } = kufe(['reduce', 'a.csv'], ['--import', older])
  expect({ status, stdout }).toEqual({ status: 5, stdout: 'given reduce a.csv\n' })
})
