// Entry of the program; bin/kufe.mjs imports it. The only file that touches the process.

import { processOutside } from './processOutside.ts'
import { processScreen } from './processScreen.ts'
import { run } from './run.ts'
import { readyForShortRun } from './shortRun.ts'
import { stopOnInterrupt } from './stopOnInterrupt.ts'

// A reader that goes away (head, less) is no fault.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
    process.exit()
  })
}

const words = process.argv.slice(2)
readyForShortRun(words[0], process.versions.node)
const screen = processScreen()
process.exitCode = await run(words, {
  screen,
  outside: processOutside(screen),
  environment: process.env,
  stopOnInterrupt,
})
