import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { filesUnder } from './filesUnder.ts'

/** Files that a clone of the project as it stands would have; without git, all but what was installed. */
function files(): string[] {
  const { status, stdout } = spawnSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    encoding: 'utf8',
  })
  const all =
    status === 0 ? stdout.split('\0') : filesUnder('.', '.').filter((path) => !path.startsWith('node_modules/'))
  return all.filter((path) => path !== '' && existsSync(path))
}

const copy = mkdtempSync(join(tmpdir(), 'kufe-fresh-'))
try {
  for (const file of files()) cpSync(file, join(copy, file))
  // Without our own packages in the path, the machine's Node and npm are found, as a stranger's would be.
  const path = (process.env.PATH ?? '').split(delimiter).filter((folder) => !folder.includes('node_modules'))
  const env = { ...process.env, PATH: path.join(delimiter), npm_config_prefer_offline: 'true' }
  const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'demo'], { cwd: copy, env, encoding: 'utf8' })
  const wanted = JSON.parse(readFileSync('package.json', 'utf8')).dependencies.node
  const node = spawnSync(join(copy, 'node_modules/.bin/node'), ['--version'], { encoding: 'utf8' }).stdout?.trim()
  const broken = [
    status === 0 ? '' : `npm run demo ended with ${status}`,
    node === `v${wanted}` ? '' : `the copy runs Node ${node}, package.json pins ${wanted}`,
    stdout.includes('friction') ? '' : 'the demo showed no friction',
  ].filter((line) => line !== '')
  if (broken.length > 0) {
    process.stdout.write(`${broken.join('\n')}\n${stderr}${stdout}`)
    process.exitCode = 1
  }
} finally {
  rmSync(copy, { recursive: true, maxRetries: 3 })
}
