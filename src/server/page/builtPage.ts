import { spawn } from 'node:child_process'
import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))
const built = join(root, 'dist', 'web')
const builder = join(root, 'node_modules', 'vite', 'bin', 'vite.js')

/** What the page is built from. */
const sources = ['src/web', 'src/core', 'src/figure', 'src/server/contract']

/**
 * Folder of the built page; it is built where it is missing or older than what it is made from. Built aside and put in
 * place in one go, so that several processes may do so at once.
 */
export async function builtPage(say: (text: string) => void): Promise<Outcome<string>> {
  const page = statSync(join(built, 'index.html'), { throwIfNoEntry: false })
  const fresh = page !== undefined && page.mtimeMs >= newest()
  if (fresh || (page !== undefined && !existsSync(builder))) return done(built)
  if (!existsSync(join(root, 'src/web/vite.config.ts')) || !existsSync(builder))
    return failed(notBuilt('vite is not installed'))
  say('Building the page of the bench (once after each change of it) …\n')
  const aside = `${built}-${process.pid}`
  const args = [builder, 'build', join(root, 'src/web'), '--outDir', aside, '--emptyOutDir', '--logLevel', 'warn']
  const said = await run(args)
  if (said !== undefined) {
    rmSync(aside, { recursive: true, force: true })
    return page === undefined ? failed(notBuilt(said)) : done(built)
  }
  const old = `${built}-${process.pid}-old`
  if (page !== undefined) renameSync(built, old)
  renameSync(aside, built)
  rmSync(old, { recursive: true, force: true })
  return done(built)
}

/** Instant of the last change of a source, ms. */
function newest(): number {
  let last = 0
  for (const folder of sources.map((source) => join(root, source)).filter(existsSync)) {
    for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
      if (entry.isFile()) last = Math.max(last, statSync(join(entry.parentPath, entry.name)).mtimeMs)
    }
  }
  return last
}

/** Gives what went wrong, or nothing. */
function run(args: readonly string[]): Promise<string | undefined> {
  const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'ignore', 'pipe'] })
  const heard: string[] = []
  child.stderr.setEncoding('utf8').on('data', (text: string) => heard.push(text))
  return new Promise((resolve) => {
    child.on('error', (error) => resolve(error.message))
    child.on('close', (code) => resolve(code === 0 ? undefined : heard.join('').trim().slice(0, 2000)))
  })
}

const notBuilt = (why: string): Problem => ({
  kind: 'pageNotBuilt',
  class: 'wrongUse',
  place: { file: built },
  what: `The page of the bench is not built: ${why}.`,
  mend: 'Set up the project with npm ci, then start anew.',
})
