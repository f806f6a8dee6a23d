import { spawnSync } from 'node:child_process'
import { join } from 'node:path'

/** How long `kufe --help` may take, as a multiple of starting Node with nothing to do. */
const allowed = 3
const rounds = 21

const kufe = join(import.meta.dirname, '..', 'bin', 'kufe.mjs')

function milliseconds(args: readonly string[]): number {
  const started = performance.now()
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`)
  return performance.now() - started
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1]

// The first start fills the cache of compiled code; then both are taken in turn, so that a busy machine slows both.
milliseconds([kufe, '--help'])
const bare: number[] = []
const help: number[] = []
for (let round = 0; round < rounds; round++) {
  bare.push(milliseconds(['-e', '0']))
  help.push(milliseconds([kufe, '--help']))
}
const ratio = median(help) / median(bare)
const words = `kufe --help ${median(help).toFixed(1)} ms, node -e 0 ${median(bare).toFixed(1)} ms`
process.stdout.write(`${words}: ratio ${ratio.toFixed(2)}, allowed ${allowed} (medians of ${rounds})\n`)
if (!(ratio <= allowed)) process.exitCode = 1
