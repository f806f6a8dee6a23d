import { spawnSync } from 'node:child_process'
import { join } from 'node:path'

/** What one run of a whole process took. */
export interface Taken {
  readonly seconds: number
  /** Seconds of processor time, of all its threads. */
  readonly processor: number
  /** Largest resident memory, bytes. */
  readonly peak: number
}

const measurer = join(import.meta.dirname, 'peer', 'measure.py')

/** Runs a program with its output to a file. Python waits for it, since Node does not tell what a child process took. */
export function measure(python: string, command: readonly string[], output: string): Taken {
  const { stdout, stderr, status } = spawnSync(python, [measurer, output, ...command], { encoding: 'utf8' })
  if (status !== 0) throw new Error(`${command.join(' ')}: ${stderr}`)
  const taken: Taken & { readonly code: number } = JSON.parse(stdout)
  if (taken.code !== 0) throw new Error(`${command.join(' ')} ended with ${taken.code}: ${stderr}`)
  return taken
}

/** The middle of each figure over several runs. */
export function medianOf(runs: readonly Taken[]): Taken {
  const middle = (pick: (taken: Taken) => number): number =>
    runs.map(pick).sort((a, b) => a - b)[runs.length >> 1] ?? Number.NaN
  return {
    seconds: middle(({ seconds }) => seconds),
    processor: middle(({ processor }) => processor),
    peak: middle(({ peak }) => peak),
  }
}

/** A Python that has these modules; undefined where none of the usual ones has. */
export function pythonWith(modules: readonly string[]): string | undefined {
  const script = modules.length === 0 ? '' : `import ${modules.join(', ')}`
  return ['python3', '/usr/bin/python3'].find((python) => spawnSync(python, ['-c', script]).status === 0)
}
