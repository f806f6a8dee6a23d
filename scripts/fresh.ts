import { spawn, spawnSync } from 'node:child_process'
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

/** Opens the bench as `npm run bench` does, asks for its page and its lab, and closes it; gives what went wrong. */
async function benchTrouble(env: NodeJS.ProcessEnv): Promise<string> {
  const words = ['scripts/ready.mjs', 'bin/kufe.mjs', 'serve', '--demo', '--port', '0', '--by', 'fresh', '--json']
  const child = spawn('node', words, { cwd: copy, env })
  const heard: string[] = []
  child.stderr.setEncoding('utf8').on('data', (text: string) => heard.push(text))
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve))
  const opened = new Promise<string>((resolve) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => resolve(/"address":"([^"]+)"/.exec(text)?.[1] ?? ''))
  })
  const address = await Promise.race([opened, ended.then(() => '')])
  if (address === '') return `the bench did not open: ${heard.join('')}`
  const page = await (await fetch(address)).text()
  const lab = await (await fetch(`${address}api/lab`)).text()
  child.kill('SIGTERM')
  const code = await ended
  if (!page.includes('<script type="module"')) return 'the bench has no page'
  if (!lab.includes('"demo":true')) return 'the bench does not show the demo lab'
  return code === 0 ? '' : `the bench ended with ${code}`
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
    await benchTrouble(env),
  ].filter((line) => line !== '')
  if (broken.length > 0) {
    process.stdout.write(`${broken.join('\n')}\n${stderr}${stdout}`)
    process.exitCode = 1
  }
} finally {
  rmSync(copy, { recursive: true, maxRetries: 3 })
}
