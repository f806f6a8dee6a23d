// Takes the pictures of the bench for the documentation, from the demo lab: node scripts/benchPictures.ts

import { spawn } from 'node:child_process'
import { openPage, startBrowser } from '../test/web/startBrowser.ts'

/** Pictures under docs/pictures, small enough for a page. */
const pictures = [
  { name: 'bench-ask', path: '/studies/drawer-runners/ask', look: 'light' },
  { name: 'bench-plan', path: '/studies/drawer-runners/plan?window=load', look: 'light' },
  { name: 'bench-plan-why', path: '/studies/oat-drinks/plan?why=lambda-fastest', look: 'dark' },
] as const

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

const { address, end } = await demoLab()
const browser = await startBrowser()
try {
  for (const { name, path, look } of pictures) {
    const { page } = await openPage(browser, address + path, { width: 1000, height: 640, look })
    await page.locator('.picture svg').first().waitFor()
    await page.waitForTimeout(1000)
    await page.screenshot({ path: `docs/pictures/${name}.png` })
    await page.context().close()
  }
} finally {
  await browser.close()
  end()
}
