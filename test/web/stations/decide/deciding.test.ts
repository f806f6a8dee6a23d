import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { accessFaults, noBrowser, openPage, startBrowser } from '../../startBrowser.ts'
import { type BenchServer, benchServer, run } from '../bench/benchServer.ts'

const records = 'test/data/records'

describe.skipIf(noBrowser)('deciding in the browser', () => {
  let server: BenchServer
  let browser: Browser
  let place = ''
  beforeAll(async () => {
    server = await benchServer()
    for (const letter of ['a', 'b']) {
      const files = [1, 2, 3].map((n) => `${records}/varnish-${letter}-${n}.csv`)
      const facts = ['--study', 'Drawer runners', '--sample', `varnish ${letter.toUpperCase()}`, '--by', 'MK']
      run('add', ...files, '--lab', server.lab, '--setup', `${records}/varnish.setup.yaml`, ...facts, '--threads', '1')
    }
    place = `${server.address}/studies/drawer-runners/decide`
    browser = await startBrowser()
  }, 240_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })

  const verdict = (page: Page) => page.getByRole('region', { name: 'Verdict' }).locator('.say').first()

  async function opened(): Promise<Page> {
    const { page } = await openPage(browser, place)
    await page.locator('.picture svg').first().waitFor()
    return page
  }

  test('the verdict stands first, and follows the margin by the keyboard', { timeout: 60_000 }, async () => {
    const page = await opened()
    await expect.poll(() => verdict(page).textContent()).toMatch(/^varnish B slips more easily than varnish A/)
    const margin = page.getByRole('spinbutton', { name: /margin/ })
    await margin.focus()
    for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowUp')
    await expect.poll(() => verdict(page).textContent()).toMatch(/less than the \d+\s%\sthat matter/)
    await page.context().close()
  })

  test('a replicate goes out for a reason alone; the reason stays; it can come back', { timeout: 60_000 }, async () => {
    const page = await opened()
    await page.getByRole('button', { name: 'take out varnish-a-2.csv' }).click()
    const sure = page.getByRole('button', { name: 'Take it out' })
    expect(await sure.isDisabled()).toBe(true)
    await page.getByLabel(/Why varnish-a-2\.csv/).fill('the plate was not clean')
    await page.getByLabel('Your initials').fill('AB')
    await sure.click()
    await page.getByText('Taken out by AB: the plate was not clean', { exact: true }).waitFor()
    await page
      .getByText(/^kept, version/)
      .first()
      .waitFor()
    await page.reload()
    await page.getByText('Taken out by AB: the plate was not clean', { exact: true }).waitFor()
    await page.getByRole('button', { name: 'put back varnish-a-2.csv' }).click()
    await page.getByRole('button', { name: 'take out varnish-a-2.csv' }).waitFor()
    await page.context().close()
  })

  test('no automatic check finds a fault, light or dark, and nothing is wider than the page', {
    timeout: 60_000,
  }, async () => {
    const page = await opened()
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await page.waitForTimeout(300)
      expect(await accessFaults(page)).toEqual([])
    }
    for (const width of [640, 820, 2560]) {
      await page.setViewportSize({ width, height: 900 })
      await page.waitForTimeout(200)
      expect(Number(await page.evaluate('document.documentElement.scrollWidth'))).toBeLessThanOrEqual(width)
    }
    await page.context().close()
  })
})
