// Debian's Chromium for tests in a real browser. As a program it sees to it that the package is there:
// node scripts/chromiumForTests.ts [--install]

import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** Path of the program; undefined where it is not installed. */
export function chromiumProgram(): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin']
  return folders.map((folder) => join(folder, 'chromium')).find(existsSync)
}

/**
 * How it is started for tests: nothing of it goes to the network by itself. The sandbox needs rights that a container and
 * root do not have; the tests open pages of our own only.
 */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
] as const

/** Installs Debian's package where that is possible. Gives why not, or nothing. */
function install(): string | undefined {
  if (process.getuid?.() !== 0) return 'installing a package needs root'
  const aptGet = '/usr/bin/apt-get'
  if (!existsSync(aptGet)) return `this system has no ${aptGet}`
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core']]) {
    const { status, stderr } = spawnSync(aptGet, args, { env, encoding: 'utf8' })
    if (status !== 0) return `apt-get ${args[0]} failed: ${stderr.trim()}`
  }
  return undefined
}

if (import.meta.main) {
  const failure = chromiumProgram() === undefined && process.argv.includes('--install') ? install() : undefined
  const program = chromiumProgram()
  const version = program && spawnSync(program, ['--version'], { encoding: 'utf8' }).stdout.trim()
  process.stdout.write(`${version ?? `Chromium is not there${failure === undefined ? '' : `: ${failure}`}.`}\n`)
  process.exitCode = program === undefined ? 1 : 0
}
