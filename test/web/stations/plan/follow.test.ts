import { describe, expect, test } from 'vitest'
import { paperServer } from '../../paperServer.ts'
import { noBrowser, startBrowser } from '../../startBrowser.ts'
import { followTimes } from './followTimes.ts'

/** One frame at 60 a second, ms. */
const frame = 16.7

describe.skipIf(noBrowser)('the pictures follow the hand', () => {
  // The median: a machine that does other things at the same time must not decide. bench/planFrame.ts prints the rest.
  test.for(['', '?window=load'])('within one frame of work: plan%s', { timeout: 120_000 }, async (search) => {
    const server = await paperServer()
    const browser = await startBrowser()
    try {
      const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
      await page.goto(`${server.address}/studies/runners/plan${search}`)
      const works = (await followTimes(page)).map(({ work }) => work).sort((a, b) => a - b)
      expect(works.length).toBeGreaterThan(60)
      expect(works[works.length >> 1]).toBeLessThan(frame)
    } finally {
      await browser.close()
      await server.stop()
    }
  })
})
