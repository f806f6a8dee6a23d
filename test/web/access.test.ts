import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type PaperServer, paperServer } from './paperServer.ts'
import { accessFaults, noBrowser, openPage, startBrowser } from './startBrowser.ts'

describe.skipIf(noBrowser)('for everybody', () => {
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

  const places = [
    '/',
    '/studies/runners/ask',
    '/studies/runners/ask?word=lambda',
    '/studies/runners/ask?why=replicates',
    '/studies/fresh/ask',
    '/studies/runners/plan',
    '/studies/runners/plan?window=load&more=bodies&why=pressure',
    '/studies/runners/plan?more=rig',
    '/studies/runners/plan?tour=2',
  ]

  const settled = async (page: Page): Promise<void> => {
    await page.locator('h1').waitFor()
    if (page.url().includes('/studies/')) await page.locator('.picture svg').first().waitFor()
  }

  describe.each(['light', 'dark'] as const)('%s', (look) => {
    test.for(places)('automatic checks find nothing wrong: %s', async (place) => {
      const { page } = await openPage(browser, server.address + place, { look })
      await settled(page)
      expect(await accessFaults(page)).toEqual([])
      await page.context().close()
    })
  })

  test.for([
    ['zoomed to 200 %', 640],
    ['on a tablet', 820],
    ['on a wide screen', 2560],
  ] as const)('nothing runs out of the page %s', async ([, width]) => {
    for (const place of ['/studies/runners/ask', '/studies/runners/plan?window=load&more=bodies']) {
      const { page } = await openPage(browser, server.address + place, { width })
      await settled(page)
      const wide: number = await page.evaluate('document.documentElement.scrollWidth')
      expect(wide, place).toBeLessThanOrEqual(width)
      const cut: string[] = await page.evaluate(
        `[...document.querySelectorAll('p, h1, h2, h3, a, button')].filter((one) => one.getBoundingClientRect().right > innerWidth + 1
          && !one.closest('.skip')).map((one) => one.textContent)`,
      )
      expect(cut).toEqual([])
      await page.context().close()
    }
  })

  test('by keyboard alone: skip to the work, stations by number, list of keys, find, glossary, look', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}/studies/runners/ask`)
    await settled(page)
    await page.keyboard.press('Tab')
    expect(await page.locator(':focus').textContent()).toBe('To the work')
    await page.keyboard.press('Enter')
    await page.keyboard.press('2')
    await page.getByText('What follows').waitFor()
    expect(new URL(page.url()).pathname).toBe('/studies/runners/plan')
    await page.keyboard.press('?')
    await page.getByRole('dialog', { name: 'Keys' }).waitFor()
    await page.keyboard.press('Escape')
    await page.keyboard.press('/')
    await page.getByRole('dialog', { name: 'Find' }).waitFor()
    await page.keyboard.type('rig u')
    await page.keyboard.press('Enter')
    expect(new URL(page.url()).pathname).toBe('/studies/runners/rig-up')
    await page.keyboard.press('g')
    await page.getByRole('dialog', { name: 'What the words mean' }).waitFor()
    await page.keyboard.press('Escape')
    await page.keyboard.press('l')
    expect(await page.locator('html').getAttribute('data-look')).toBe('dark')
    await page.goBack()
    // The browser itself notes the answer that the small lab of this test keeps no run sheet.
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
  })
})
