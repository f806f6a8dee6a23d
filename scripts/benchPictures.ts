// Takes the pictures of the bench for the documentation, from the demo lab: node scripts/benchPictures.ts [name…]

import { spawn } from 'node:child_process'
import type { StudyAnswer } from '../src/server/contract/index.ts'
import { openPage, startBrowser } from '../test/web/startBrowser.ts'

interface BenchPicture {
  readonly name: string
  /** `{wax}` stands for the record wax.csv. */
  readonly path: string
  readonly size: readonly [number, number]
  readonly look?: 'dark'
  /** Words in a figure that are brought to the upper edge first. */
  readonly scrollTo?: string
}

const study = '/studies/drawer-runners'

/** Pictures under docs/pictures, small enough for a page. */
const pictures: readonly BenchPicture[] = [
  { name: 'bench-ask', path: `${study}/ask`, size: [1180, 720] },
  { name: 'bench-plan', path: `${study}/plan?window=load`, size: [1180, 720] },
  { name: 'bench-rig-up', path: `${study}/rig-up/forceRipple`, size: [820, 900] },
  { name: 'bench-shelf', path: `${study}/read`, size: [1280, 620] },
  { name: 'bench-record', path: `${study}/read/{wax}`, size: [1280, 1000] },
  {
    name: 'bench-point',
    path: `${study}/read/{wax}/9`,
    size: [1280, 900],
    look: 'dark',
    scrollTo: 'Trace of step 9',
  },
  { name: 'bench-report', path: `${study}/report`, size: [1280, 900] },
  { name: 'bench-lab', path: `${study}/read?lab=bodies`, size: [1280, 760] },
]

/** Starts the demo lab on a free port; gives its address and what ends it. */
async function demoLab(): Promise<{ readonly address: string; readonly end: () => void }> {
  const env = { ...process.env, KUFE_BY: 'MK' }
  const child = spawn('node', ['bin/kufe.mjs', 'serve', '--demo', '--json', '--port', '0'], { env })
  child.stdout.setEncoding('utf8')
  for await (const text of child.stdout) {
    const found = /"address":"([^"]+)"/.exec(text)
    if (found !== null) return { address: found[1].replace(/\/$/, ''), end: () => child.kill('SIGINT') }
  }
  throw new Error('the demo lab did not start')
}

async function recordCalled(address: string, name: string): Promise<string> {
  const answer = (await (await fetch(`${address}/api${study}`)).json()) as Pick<StudyAnswer, 'records'> // its own server's
  const found = answer.records.find((record) => record.name === name)
  if (found === undefined) throw new Error(`the demo has no record called ${name}`)
  return found.id
}

const wanted = process.argv.slice(2)
const { address, end } = await demoLab()
const browser = await startBrowser()
try {
  const wax = await recordCalled(address, 'wax.csv')
  for (const { name, path, size, look = 'light', scrollTo } of pictures) {
    if (wanted.length > 0 && !wanted.includes(name)) continue
    const [width, height] = size
    const { page } = await openPage(browser, address + path.replace('{wax}', wax), { width, height, look })
    await page.waitForTimeout(3500)
    if (scrollTo !== undefined) {
      const words = JSON.stringify(scrollTo)
      await page.evaluate(
        `[...document.querySelectorAll('svg text')].find((one) => one.textContent === ${words}).scrollIntoView({ block: 'start' })`,
      )
      await page.waitForTimeout(500)
    }
    await page.screenshot({ path: `docs/pictures/${name}.png` })
    await page.context().close()
  }
} finally {
  await browser.close()
  end()
}
