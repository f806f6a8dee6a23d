// Makes a fresh clone ready, then runs a program of the project under the Node that the lock file pins.
// Plain JavaScript for any Node from 20 on: it is the one file that must run before anything is installed.
// Use: node scripts/ready.mjs PROGRAM [ARGUMENTS…]

import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { delimiter, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const modules = join(root, 'node_modules')
const pinnedNode = join(modules, 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node')

const say = (/** @type {string} */ text) => process.stderr.write(text)

/** Versions by path as a lock file lists them. @param {string} file @returns {Record<string, {version?: string, optional?: boolean}>} */
const locked = (file) => JSON.parse(readFileSync(file, 'utf8')).packages

/** True when what is installed is what the lock file asks for. Dates of files say little after a checkout, so versions are held side by side. */
function isReady() {
  const installedList = join(modules, '.package-lock.json')
  if (!existsSync(installedList) || !existsSync(pinnedNode)) return false
  const installed = locked(installedList)
  const wanted = Object.entries(locked(join(root, 'package-lock.json'))).filter(([path]) => path !== '')
  return wanted.every(([path, { version, optional }]) =>
    path in installed ? installed[path].version === version && existsSync(join(root, path)) : optional === true,
  )
}

/**
 * Starts a program and gives its exit code. A stop by Ctrl-C reaches it from the terminal, other stops are handed on.
 * @param {string} program @param {string[]} args @param {import('node:child_process').SpawnOptions} options
 */
function run(program, args, options) {
  const shell = process.platform === 'win32' && !program.endsWith('.exe')
  const child = spawn(program, args, { shell, stdio: 'inherit', ...options })
  process.on('SIGINT', () => {})
  for (const signal of /** @type {const} */ (['SIGTERM', 'SIGHUP'])) process.on(signal, () => child.kill(signal))
  return new Promise((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code, signal) => resolve(code ?? (signal === 'SIGINT' ? 130 : 143)))
  })
}

/** Installs by the lock file alone, saying every few seconds that it is still at work. */
async function install() {
  const started = Date.now()
  const seconds = () => Math.round((Date.now() - started) / 1000)
  say('Installing the packages that package-lock.json names, the pinned Node among them (once; needs the network) …\n')
  const ticking = setInterval(() => say(`  still installing, ${seconds()} s\n`), 5000)
  const npm = process.env.npm_execpath
  const [program, first] = npm && /\.[cm]?js$/.test(npm) ? [process.execPath, [npm]] : ['npm', []]
  const quiet = ['--include=dev', '--no-audit', '--no-fund', '--loglevel=error']
  const installing = run(program, [...first, 'ci', ...quiet], { cwd: root, stdio: ['inherit', 2, 2] }) // stdout is the program's
  const code = await installing.finally(() => clearInterval(ticking))
  if (code === 0 && isReady()) return say(`Installed in ${seconds()} s.\n`)
  say(
    code === 0
      ? `npm ended well, but ${pinnedNode} or another package is missing. Allow npm to run install scripts, delete node_modules and try again.\n`
      : `Installing failed (npm ci ended with ${code}); npm's words stand above. Check the network and the disk, then try again.\n`,
  )
  process.exit(1)
}

if (!isReady()) await install()

const [program, ...args] = process.argv.slice(2)
if (program !== undefined) {
  // A shell remembers where it first found `node`, so the pinned one goes first in the PATH of a new process.
  const path = [join(modules, '.bin'), process.env.PATH ?? ''].join(delimiter)
  process.exitCode = await run(pinnedNode, [join(root, program), ...args], { env: { ...process.env, PATH: path } })
}
