import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const root = new URL('../../../../', import.meta.url).pathname
const kufe = join(root, 'bin/kufe.mjs')

/** The bench as a person starts it: the program itself, over a lab in a folder of its own. It can be killed and started again. */
export interface BenchServer {
  readonly address: string
  readonly lab: string
  /** Ends it at once, as a power cut does. */
  kill(): Promise<void>
  /** Starts it again on the same port. */
  again(): Promise<void>
  /** Ends it and throws the lab away. */
  end(): Promise<void>
}

export const run = (...args: readonly string[]): string =>
  execFileSync(process.execPath, [kufe, ...args], { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })

/** Records of the examples, in a study of their own. */
export interface BenchLab {
  readonly study: string
  readonly records: readonly string[]
}

/** Starts the bench on a fresh lab, with records in it if wanted. */
export async function benchServer(filled?: BenchLab): Promise<BenchServer> {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-bench-'))
  const lab = join(folder, 'lab')
  run('lab', 'new', lab, '--title', 'Lacquer workshop (invented)', '--by', 'MK')
  if (filled !== undefined) run('add', ...filled.records, '--lab', lab, '--by', 'MK', '--study', filled.study)
  let child: ChildProcess
  let address = ''
  const start = async (port: string): Promise<void> => {
    child = spawn(process.execPath, [kufe, 'serve', '--lab', lab, '--by', 'MK', '--port', port, '--json'], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    address = await addressOf(child)
  }
  const kill = async (): Promise<void> => {
    const gone = new Promise((resolve) => child.once('exit', resolve))
    child.kill('SIGKILL')
    await gone
  }
  await start('0')
  return {
    address: address.replace(/\/$/, ''),
    lab,
    kill,
    again: () => start(new URL(address).port),
    end: async () => {
      if (child.exitCode === null && child.signalCode === null) await kill()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    let trouble = ''
    child.stderr?.on('data', (text) => {
      trouble += text
    })
    child.stdout?.on('data', (text) => {
      said += text
      const found = /\{.*"address".*\}/.exec(said)?.[0]
      if (found !== undefined) resolve(JSON.parse(found).address)
    })
    child.once('exit', (code) => reject(new Error(`the bench ended with ${code}: ${trouble}`)))
  })
}
