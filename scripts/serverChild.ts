// A server in a process of its own, for tests that kill it: node scripts/serverChild.ts LAB. It prints its address, and ends in order on SIGTERM.

import { startServer } from '../src/server/index.ts'

const [place] = process.argv.slice(2)
const outside = {
  now: () => new Date(),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe 0.0.0-test',
}
const onFault = (error: unknown): void => void process.stderr.write(`${error}\n`)
const call = { place, who: 'MK', why: '' }
const running = await startServer({ call, port: 0, page: place, threads: 1, onFault }, outside)
if (!running.ok) throw new Error(running.problems[0].what)
process.stdout.write(`${running.value.address}\n`)
process.once('SIGTERM', () => void running.value.close())
