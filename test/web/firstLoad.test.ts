import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { builtPage } from '../../src/server/page/builtPage.ts'
import { type PaperServer, paperServer } from './paperServer.ts'
import { noBrowser, startBrowser } from './startBrowser.ts'

/** Compressed script before the first station shows, in bytes. */
const mostScript = 180_000

interface Chunk {
  readonly file: string
  readonly imports?: readonly string[]
}

/** All script that must be there before a station shows: the page's own and the station's, with what they import. */
async function scriptOf(station: string): Promise<number> {
  const built = await builtPage(() => undefined)
  if (!built.ok) throw new Error('the page cannot be built')
  const manifest: Record<string, Chunk> = JSON.parse(readFileSync(join(built.value, '.vite/manifest.json'), 'utf8'))
  const files = new Set<string>()
  const walk = (key: string): void => {
    const { file, imports = [] } = manifest[key]
    if (files.has(file)) return
    files.add(file)
    imports.forEach(walk)
  }
  walk('index.html')
  walk(`stations/${station}/index.tsx`)
  return [...files].reduce((sum, file) => sum + gzipSync(readFileSync(join(built.value, file)), { level: 9 }).length, 0)
}

describe('the first load', () => {
  test.for(['ask', 'plan', 'rig-up', 'read', 'decide', 'report'])(
    'brings at most 180 kB of compressed script before the station shows: %s',
    { timeout: 120_000 },
    async (station) => {
      const bytes = await scriptOf(station)
      expect(bytes).toBeGreaterThan(50_000)
      expect(bytes, `${bytes} bytes`).toBeLessThan(mostScript)
    },
  )
})

describe.skipIf(noBrowser)('the first second', () => {
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

  test.for(['ask', 'plan'])('is enough until a quantity can be edited: %s', async (station) => {
    const times: number[] = []
    for (let round = 0; round < 4; round++) {
      const page = await browser.newPage()
      const started = performance.now()
      await page.goto(`${server.address}/studies/runners/${station}`, { waitUntil: 'commit' })
      await page.getByRole('spinbutton', { name: 'slowest sliding speed' }).waitFor()
      times.push(performance.now() - started)
      await page.close()
    }
    // The first round also starts the browser's own parts; a busy machine must not decide.
    expect(Math.min(...times.slice(1)), `${times.map(Math.round).join(', ')} ms`).toBeLessThan(1000)
  })
})
