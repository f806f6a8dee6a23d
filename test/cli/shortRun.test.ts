import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'

// An engine that does not know a flag says so on standard error.
test('the engine knows every flag that it is given', () => {
  const script =
    "import { readyForShortRun } from './src/cli/shortRun.ts'\n" +
    "readyForShortRun('reduce', process.versions.node)\n" +
    "console.log('done')"
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    encoding: 'utf8',
  })
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: 'done\n', stderr: '' })
})
