// How long a plan's pictures take to follow the hand, in a real browser: node bench/planFrame.ts

import { paperServer } from '../test/web/paperServer.ts'
import { startBrowser } from '../test/web/startBrowser.ts'
import { followTimes } from '../test/web/stations/plan/followTimes.ts'

const server = await paperServer()
const browser = await startBrowser()
try {
  for (const search of ['', '?window=load']) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(`${server.address}/studies/runners/plan${search}`)
    const times = await followTimes(page)
    for (const kind of ['work', 'clock'] as const) {
      const sorted = times.map((time) => time[kind]).sort((a, b) => a - b)
      const at = (share: number): string => sorted[Math.floor(share * (sorted.length - 1))].toFixed(1).padStart(6)
      const name = `${search === '' ? 'speed × friction' : 'speed × load'}, ${kind}`
      process.stdout.write(`${name.padEnd(26)} median ${at(0.5)} ms  p95 ${at(0.95)} ms  worst ${at(1)} ms\n`)
    }
    await page.close()
  }
} finally {
  await browser.close()
  await server.stop()
}
