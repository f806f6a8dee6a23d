import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { accessFaults, noBrowser, openPage, startBrowser } from '../../../startBrowser.ts'
import { type BenchServer, benchServer } from '../../bench/benchServer.ts'

/** Looking for starts, loops and cycles takes a busy machine a while. */
const patient = { timeout: 30_000 }

describe.skipIf(noBrowser)('beyond the curve', () => {
  let server: BenchServer
  let browser: Browser
  beforeAll(async () => {
    const records = ['stick-slip', 'up-and-down', 'wearing-ball'].map((name) => `test/data/records/${name}.csv`)
    server = await benchServer({ study: 'Beyond', records })
    browser = await startBrowser()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })

  test.for([
    {
      name: 'stick-slip',
      says: 'Stick–slip and vibration',
      words: /sticks \(%\).*1\.7 \(1\.7 to 1\.71\)/s,
      lacks: 'Up and down',
    },
    { name: 'up-and-down', says: 'Up and down', words: /^Up and downNo loop: /, lacks: 'Breakaway' },
    { name: 'wearing-ball', says: 'Wear', words: /gap fell by 60 µm/, lacks: 'Up and down' },
  ])('$name says what it holds, and by one line what it lacks', { timeout: 60_000 }, async (about) => {
    const { page, complaints } = await openPage(browser, `${server.address}/studies/beyond/read`)
    await page.getByRole('link', { name: new RegExp(`${about.name}\\.csv`) }).click()
    const door = page.getByRole('button', { name: 'Look beyond the curve' })
    await door.waitFor(patient)
    expect(await page.getByRole('heading', { name: about.says, exact: true }).count()).toBe(0)
    await door.press('Enter')
    const part = page.getByRole('region', { name: about.says, exact: true })
    await part.locator('svg').first().waitFor(patient)
    expect(page.url()).toContain('beyond=open')
    expect(await part.textContent()).toMatch(about.words)
    const missing = page.getByRole('list', { name: 'What this record does not tell' })
    expect(await missing.getByRole('listitem').allTextContents()).toContainEqual(
      expect.stringMatching(new RegExp(`^${about.lacks}: `)),
    )
    const light = await accessFaults(page)
    await page.emulateMedia({ colorScheme: 'dark' })
    await page.locator(':root[data-look="dark"]').waitFor()
    await page.setViewportSize({ width: 820, height: 1100 })
    await page.waitForFunction('document.documentElement.scrollWidth <= 820')
    expect({ light, dark: await accessFaults(page) }).toEqual({ light: [], dark: [] })
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
    await page.context().close()
  })
  test('the turn map shows late turns against early ones, and the address says so', { timeout: 60_000 }, async () => {
    const { page, complaints } = await openPage(browser, `${server.address}/studies/beyond/read`)
    await page.getByRole('link', { name: /wearing-ball\.csv/ }).click()
    const part = page.getByRole('region', { name: 'Turn map' })
    await part.getByRole('combobox', { name: 'What the turn map shows' }).selectOption('friction')
    await part.getByRole('combobox', { name: 'How the turns are shown' }).selectOption('late turns against early ones')
    await part.locator('figure svg').nth(1).waitFor(patient)
    expect(await part.getByRole('figure').count()).toBe(2)
    expect(page.url()).toMatch(/turns=friction.*view=change/)
    expect(await accessFaults(page)).toEqual([])
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
    await page.context().close()
  })
})
