import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** The program itself with a bench on a lab of its own, as somebody would start it. */
export interface StartedBench {
  /** Without a slash at its end. */
  readonly address: string
  /** Folder of the lab. */
  readonly place: string
  /** Kills it as a power cut would. */
  kill(): Promise<void>
  /** Starts it again on the same lab and port. */
  again(): Promise<void>
  /** Ends it in order and gives its exit code and what it said on standard error. */
  stop(): Promise<{ readonly code: number | null; readonly said: string }>
  /** Ends it and throws the lab away. */
  [Symbol.asyncDispose](): Promise<void>
}

const program = new URL('../../bin/kufe.mjs', import.meta.url).pathname

/** A lab as `kufe lab new` makes it, or the demo lab, served on a free port. */
export async function startBench({ demo = false }: { readonly demo?: boolean } = {}): Promise<StartedBench> {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-bench-'))
  const place = join(folder, 'lab')
  if (!demo) await ran(['lab', 'new', place, '--title', 'A fresh lab', '--by', 'MK'])
  const lab = demo ? ['--demo', place] : ['--lab', place]
  let running = await serve([...lab, '--port', '0'])
  const { address } = running
  const end = async (signal: NodeJS.Signals): Promise<number | null> => {
    running.child.kill(signal)
    return running.ended
  }
  return {
    address,
    place,
    kill: async () => void (await end('SIGKILL')),
    again: async () => {
      running = await serve([...lab, '--port', new URL(address).port])
    },
    stop: async () => ({ code: await end('SIGINT'), said: running.said() }),
    [Symbol.asyncDispose]: async () => {
      await end('SIGKILL')
      rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
    },
  }
}

interface Serving {
  readonly child: ChildProcess
  readonly address: string
  readonly ended: Promise<number | null>
  readonly said: () => string
}

function serve(args: readonly string[]): Promise<Serving> {
  const child = spawn(process.execPath, [program, 'serve', ...args, '--by', 'MK', '--json'])
  const heard: string[] = []
  child.stderr.setEncoding('utf8').on('data', (text: string) => heard.push(text))
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve))
  return new Promise((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      const address = /"address":"(http:[^"]*?)\/?"/.exec(text)?.[1]
      if (address !== undefined) resolve({ child, address, ended, said: () => heard.join('') })
    })
    void ended.then((code) => reject(new Error(`kufe serve ended with ${code}: ${heard.join('')}`)))
  })
}

async function ran(args: readonly string[]): Promise<void> {
  const child = spawn(process.execPath, [program, ...args])
  const code = await new Promise((resolve) => child.on('close', resolve))
  if (code !== 0) throw new Error(`kufe ${args.join(' ')} ended with ${code}`)
}
