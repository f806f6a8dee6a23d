import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type StartedBench, startBench } from './startBench.ts'
import { noBrowser, openPage, startBrowser } from './startBrowser.ts'

describe.skipIf(noBrowser !== undefined)('the page from its own server, with the demo lab', () => {
  let bench: StartedBench
  let browser: Awaited<ReturnType<typeof startBrowser>>
  beforeAll(async () => {
    bench = await startBench({ demo: true })
    browser = await startBrowser()
  }, 120_000)
  afterAll(async () => {
    await browser?.close()
    await bench?.[Symbol.asyncDispose]()
  })

  test.for(['ask', 'plan', 'rig-up', 'read', 'decide', 'report'])(
    '%s: nothing is refused by the content security policy, and nothing asked for is missing',
    async (station) => {
      const { page, complaints } = await openPage(browser, `${bench.address}/studies/drawer-runners/${station}`)
      await page.waitForLoadState('networkidle').catch(() => {}) // events go on for ever
      await page.getByText('Which of two lacquers lets a wooden drawer slide easier?').first().waitFor()
      expect(complaints).toEqual([])
      await page.close()
    },
  )

  test('Ctrl+C ends it in order while a page listens', async () => {
    const { page } = await openPage(browser, bench.address)
    await page.getByText('Demo lab, invented').first().waitFor()
    expect(await bench.stop()).toEqual({ code: 0, said: expect.not.stringContaining('Error') })
    await page.close()
  }, 60_000)
})
