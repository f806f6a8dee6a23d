import { spawn } from 'node:child_process'
import { join } from 'node:path'

/** What a child said before it ended. */
export interface Heard {
  /** What it acknowledged, such as `record 3f9a…`, in order. */
  readonly kept: readonly string[]
  readonly ready: boolean
  /** ms from its first word to its end. */
  readonly lasted: number
  /** Whether it ended by the kill and not by itself. */
  readonly killed: boolean
}

export interface Killing {
  /** ms from its first word to the kill; it runs to its end without. */
  readonly after?: number
  /** Number of the step before which it kills itself. */
  readonly dieAt?: number
  /** How many records or backups it makes before it ends by itself; without, it goes on. */
  readonly count?: number
}

const program = join(import.meta.dirname, '../storeChild.ts')

/** Runs a child on a lab and kills it as told. Throws when it ended badly by itself. */
export function runChild(args: readonly string[], { after, dieAt }: Killing = {}): Promise<Heard> {
  const env = { ...process.env, ...(dieAt === undefined ? {} : { KUFE_DIE_AT: String(dieAt) }) }
  const child = spawn(process.execPath, [program, ...args], { env, stdio: ['ignore', 'pipe', 'pipe'] })
  let heard = ''
  let complaint = ''
  let began = 0
  child.stderr.setEncoding('utf8').on('data', (text) => {
    complaint += text
  })
  child.stdout.setEncoding('utf8').on('data', (text) => {
    heard += text
    if (began > 0) return
    began = performance.now()
    if (after !== undefined) setTimeout(() => child.kill('SIGKILL'), after)
  })
  return new Promise((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code, signal) => {
      if (signal !== 'SIGKILL' && code !== 0)
        return reject(new Error(`${args.join(' ')} ended with ${code}: ${heard}${complaint}`))
      const lines = heard.split('\n').slice(0, -1) // the last one may be cut
      const kept = lines.filter((line) => line.startsWith('kept ')).map((line) => line.slice(5))
      resolve({ kept, ready: began > 0, lasted: performance.now() - began, killed: signal === 'SIGKILL' })
    })
  })
}
