import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type PaperServer, paperServer } from './paperServer.ts'
import { noBrowser, openPage, startBrowser } from './startBrowser.ts'

describe.skipIf(noBrowser)('what is typed is kept', () => {
  let server: PaperServer
  let browser: Browser
  beforeAll(async () => {
    browser = await startBrowser()
  })
  afterAll(() => browser?.close())
  beforeEach(async () => {
    server = await paperServer()
  }, 120_000)
  afterEach(() => server?.stop())

  const plan = (): string => `${server.address}/studies/runners/plan`
  const speed = (): unknown => (server.question('runners')?.content as { ask?: { slowest: string } })?.ask?.slowest
  const shown = (page: Page): Promise<string | null> => slowest(page).textContent()
  const slowest = (page: Page) => page.getByRole('spinbutton', { name: 'slowest sliding speed' })

  async function type(page: Page, text: string): Promise<void> {
    await slowest(page).focus()
    await page.keyboard.press('Enter')
    await page.keyboard.type(text)
    await page.keyboard.press('Enter')
  }

  test('a tab without changes takes the newer version and says so', async () => {
    const { page } = await openPage(browser, plan())
    const other = await openPage(browser, plan())
    await slowest(page).waitFor()
    await type(other.page, '2 mm/s')
    await expect.poll(() => shown(page)).toBe('2 mm/s')
    await page.getByText('MK changed the question meanwhile; this is now version 2.').waitFor()
    await page.getByRole('button', { name: 'Seen' }).click()
    expect(server.question('runners')?.version).toBe(2)
  })

  test('two tabs do not overwrite each other silently: take theirs, or keep mine', async () => {
    const { page } = await openPage(browser, plan())
    await slowest(page).waitFor()
    // Another desk keeps a version, and this one has not heard of it when it sends its own.
    server.keep('runners', { ...(server.question('runners')?.content as object), title: 'Theirs' }, 'unheard')
    await type(page, '3 mm/s')
    const choice = page.getByRole('alert').filter({ hasText: 'AB kept version 2 of the question' })
    await choice.waitFor()
    expect(await shown(page)).toBe('3 mm/s')
    expect(speed()).toBe('0.1 mm/s')
    await page.getByRole('button', { name: 'Keep mine as version 3' }).click()
    await expect.poll(speed).toBe('3 mm/s')
    expect(server.question('runners')).toMatchObject({ version: 3, by: 'MK' })

    server.keep('runners', { ...(server.question('runners')?.content as object), title: 'Theirs again' }, 'unheard')
    await type(page, '4 mm/s')
    await page.getByRole('button', { name: 'Take version 4, drop mine' }).click()
    await expect.poll(() => shown(page)).toBe('3 mm/s')
    await page.getByRole('heading', { name: 'Theirs again' }).waitFor()
    expect(server.question('runners')?.version).toBe(4)
  })

  test('a dead server is told, keeps nothing back, and comes back by itself', async () => {
    const { page } = await openPage(browser, plan())
    await slowest(page).waitFor()
    await server.stop()
    await page.getByText('The server does not answer.').waitFor()
    await type(page, '5 mm/s')
    await page.getByText('kept in this browser until the server is back').waitFor()
    await server.start()
    await page.getByText('The server does not answer.').waitFor({ state: 'detached', timeout: 15_000 })
    await expect.poll(speed, { timeout: 10_000 }).toBe('5 mm/s')
    await page.getByText('kept, version 2').waitFor()
  })

  test('parts of the page that had not come when the server died come when it is back', async () => {
    const { page } = await openPage(browser, plan())
    await page.route(/(?:Consequences|PlanPictures|planner)-.*\.js$/, (route) => route.abort())
    await page.reload()
    await slowest(page).waitFor()
    expect(await page.getByText('What follows').count()).toBe(0)
    await page.unrouteAll()
    await page.getByText('What follows').waitFor()
    await page.locator('.picture svg').first().waitFor()
  })

  test('a tab that dies before sending leaves its change to the next one', async () => {
    const { page } = await openPage(browser, plan())
    await slowest(page).waitFor()
    await server.stop()
    await page.getByText('The server does not answer.').waitFor()
    await type(page, '6 mm/s')
    await page.getByText('kept in this browser').waitFor()
    const context = page.context()
    await page.close()
    await server.start()
    const next = await context.newPage()
    await next.goto(plan())
    await expect.poll(() => shown(next)).toBe('6 mm/s')
    await expect.poll(speed).toBe('6 mm/s')
  })

  test('a new study begins with defaults in lighter ink; a change keeps a whole question', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}/studies/fresh/ask`)
    await page.getByText('A new study: what stands in lighter ink').waitFor()
    expect(await page.locator('.quantity:not(.assumed)').count()).toBe(0)
    await page.getByRole('combobox', { name: 'kind of question' }).selectOption('limit')
    await page.getByText('Does the friction of').waitFor()
    await expect.poll(() => server.question('fresh')?.version).toBe(1)
    const content = server.question('fresh')?.content as { ask: object; assumed: string }
    expect(content.ask).toEqual({ slowest: '0.5 mm/s', fastest: '200 mm/s', kind: 'limit' })
    expect(content.assumed.split(', ')).toContain('ask.slowest')
    expect(content.assumed.split(', ')).not.toContain('ask.kind')
    // The browser itself notes the answer that there is no paper yet.
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
  })
})
