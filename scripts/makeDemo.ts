// Makes the records of the demo from their virtual runs: `node scripts/makeDemo.ts [folder]`, examples/ when none is named.
import { join } from 'node:path'
import { demoFiles, demoRecords } from '../src/bench/demoRecords.ts'
import { simulate } from '../src/bench/simulate.ts'
import type { Outside } from '../src/core/terms/index.ts'

const outside: Outside = {
  now: () => new Date(),
  progress: () => {},
  stop: { aborted: false },
  program: 'makeDemo',
}

/** Writes record, setup and truth of every demo record under `folder`. */
export function makeDemo(folder?: string): void {
  for (const record of demoRecords) {
    const { run } = demoFiles(record)
    const target = join(demoFiles(record, folder).record, '..')
    const made = simulate({ runFile: run, folder: target, force: true }, outside)
    if (!made.ok)
      throw new Error(
        made.problems.map(({ place, what, mend }) => `${place.file}:${place.line} ${what} ${mend}`).join('\n'),
      )
  }
}

if (import.meta.main) makeDemo(process.argv[2])
