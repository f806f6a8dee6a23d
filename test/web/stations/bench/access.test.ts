import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { accessFaults, noBrowser, openPage, startBrowser } from '../../startBrowser.ts'
import { type BenchServer, benchServer } from './benchServer.ts'

/** 640 is 1280 at 200 % zoom, 820 a tablet, 2560 a wide desk. */
const widths = [640, 820, 2560] as const

/** Pictures and lists come one after another; ms. */
const settled = 700

const parts = ['rigs', 'fixtures', 'bodies', 'liquids', 'materials', 'standards', 'people', 'history'] as const

describe.skipIf(noBrowser)('for everybody', () => {
  let server: BenchServer
  let browser: Browser
  let record = ''
  beforeAll(async () => {
    server = await benchServer({ study: 'Drawer runners', records: ['examples/lacquer/silicone-spray.csv'] })
    browser = await startBrowser()
    const answer = await fetch(`${server.address}/api/studies/drawer-runners`)
    record = /"id":"([0-9a-f]{12})/.exec(await answer.text())?.[1] ?? ''
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })

  const places = () => [
    { path: 'read', wait: '.shelf-name' },
    { path: `read/${record}/17?setup=text`, wait: '.step-pictures svg' },
    { path: 'rig-up', wait: '.one-step' },
    { path: 'rig-up/sweep', wait: '.sweep-table' },
    { path: 'report', wait: '.lacking li' },
    ...parts.map((part) => ({ path: `read?lab=${part}`, wait: '.drawer-part' })),
  ]

  test('no automatic check finds a fault, light or dark; nothing is wider than the page; its policy is kept', {
    timeout: 180_000,
  }, async () => {
    for (const { path, wait } of places()) {
      const { page, complaints } = await openPage(browser, `${server.address}/studies/drawer-runners/${path}`)
      await page.locator(wait).first().waitFor()
      await page.waitForTimeout(settled)
      const light = await accessFaults(page)
      await page.emulateMedia({ colorScheme: 'dark' })
      await page.locator(':root[data-look="dark"]').waitFor()
      await page.waitForTimeout(settled / 3)
      const dark = await accessFaults(page)
      const wide: number[] = []
      for (const width of widths) {
        await page.setViewportSize({ width, height: 900 })
        await page.waitForTimeout(settled / 3)
        // A busy machine lays out slowly: the same condition, waited for.
        const fits = page.waitForFunction(`document.documentElement.scrollWidth <= ${width}`, undefined, {
          timeout: 3000,
        })
        await fits.catch(() => wide.push(width))
      }
      // That a paper is not there yet is an answer, not a fault; the browser notes it all the same.
      const said = complaints.filter((text) => !text.includes('404'))
      expect({ path, light, dark, wide, said }).toEqual({ path, light: [], dark: [], wide: [], said: [] })
      await page.context().close()
    }
  })

  test('a run sheet prints on two pages', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/drawer-runners/rig-up`)
    await page.getByText('Done, go on').waitFor()
    const pdf = await page.pdf({ preferCSSPageSize: true })
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(2)
  }, 60_000)
})
