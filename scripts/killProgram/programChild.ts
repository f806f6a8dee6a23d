import { spawn } from 'node:child_process'
import { join } from 'node:path'

/** What the program said before it ended. */
export interface Heard {
  /** Whole lines of standard output; one that the kill cut off is not among them. */
  readonly lines: readonly string[]
  readonly complaint: string
  /** ms from its start to its end. */
  readonly lasted: number
  readonly code: number | null
  readonly killed: boolean
}

export interface Stopping {
  /** ms from its start to a kill -9; it runs to its end without. */
  readonly killAfter?: number
  /** Asked to stop, as by Ctrl+C, once this has been heard so often. */
  readonly interruptAt?: { readonly line: RegExp; readonly times: number }
}

const program = join(import.meta.dirname, '../../bin/kufe.mjs')

/** Runs the program as people start it, and stops it as told. */
export function runProgram(words: readonly string[], { killAfter, interruptAt }: Stopping = {}): Promise<Heard> {
  const env = { ...process.env, NO_COLOR: '1', KUFE_BY: 'MK', KUFE_LAB: undefined }
  const began = performance.now()
  const child = spawn(process.execPath, [program, ...words], { env, stdio: ['ignore', 'pipe', 'pipe'] })
  let said = ''
  let complaint = ''
  child.stderr.setEncoding('utf8').on('data', (text) => {
    complaint += text
  })
  child.stdout.setEncoding('utf8').on('data', (text) => {
    said += text
    if (interruptAt === undefined) return
    if (said.split('\n').filter((line) => interruptAt.line.test(line)).length >= interruptAt.times) child.kill('SIGINT')
  })
  if (killAfter !== undefined) setTimeout(() => child.kill('SIGKILL'), killAfter)
  return new Promise((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code, signal) => {
      const lines = said.split('\n').slice(0, -1)
      resolve({ lines, complaint, lasted: performance.now() - began, code, killed: signal === 'SIGKILL' })
    })
  })
}
