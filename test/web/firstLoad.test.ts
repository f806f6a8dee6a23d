import { gzipSync } from 'node:zlib'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type PaperServer, paperServer } from './paperServer.ts'
import { noBrowser, startBrowser } from './startBrowser.ts'

/** Compressed script before the first station shows, in bytes. */
const mostScript = 180_000

describe.skipIf(noBrowser)('the first load', () => {
  let server: PaperServer
  let browser: Browser
  beforeAll(async () => {
    server = await paperServer()
    browser = await startBrowser()
  }, 120_000)
  afterAll(async () => {
    await browser?.close()
    await server?.stop()
  })

  test.for(['ask', 'plan'])('brings at most 180 kB of script and is usable within a second: %s', async (station) => {
    const times: number[] = []
    let script = 0
    for (let round = 0; round < 4; round++) {
      const page = await browser.newPage()
      const bodies: Promise<Buffer>[] = []
      page.on('response', (response) => {
        if (new URL(response.url()).pathname.endsWith('.js')) bodies.push(response.body())
      })
      const started = performance.now()
      await page.goto(`${server.address}/studies/runners/${station}`, { waitUntil: 'commit' })
      await page.getByRole('spinbutton', { name: 'slowest sliding speed' }).waitFor()
      times.push(performance.now() - started)
      const shown = await Promise.all(bodies)
      script = shown.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0)
      await page.close()
    }
    // The first round also starts the browser's own parts; a busy machine must not decide.
    const best = Math.min(...times.slice(1))
    expect(script).toBeGreaterThan(50_000)
    expect(script, `${script} bytes`).toBeLessThan(mostScript)
    expect(best, `${times.map(Math.round).join(', ')} ms`).toBeLessThan(1000)
  })
})
