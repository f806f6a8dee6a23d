import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type PaperServer, paperServer } from '../../paperServer.ts'
import { noBrowser, openPage, startBrowser } from '../../startBrowser.ts'

describe.skipIf(noBrowser)('the question', () => {
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

  const open = () => openPage(browser, `${server.address}/studies/runners/ask`)
  const deciding = (): Record<string, string> =>
    (server.question('runners')?.content as { deciding?: Record<string, string> } | undefined)?.deciding ?? {}

  test('a smaller difference costs more replicates, at once', async () => {
    const { page, complaints } = await open()
    await page.getByRole('button', { name: 'four replicates' }).waitFor()
    const difference = page.getByRole('spinbutton', { name: 'difference worth knowing' })
    await difference.click()
    await page.getByRole('textbox', { name: 'difference worth knowing' }).fill('6,0 %')
    await page.keyboard.press('Enter')
    // Two-sample t test, 6 % scatter, 80 % power, 5 %: a difference of one scatter takes 17 of each
    // (Cohen 1988, table 2.4.1, from memory).
    await page.getByRole('button', { name: '17 replicates' }).waitFor()
    await page.locator('svg text', { hasText: 'matters from 6 %' }).waitFor()
    await expect.poll(() => deciding().difference).toBe('6,0 %')
    expect(complaints).toEqual([])
  })

  test('samples are renamed, added and left out', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: 'sample 2: lacquer B' }).click()
    await page.keyboard.type('oil, hard')
    await page.keyboard.press('Enter')
    await expect.poll(() => deciding().samples).toBe('lacquer A, oil hard')
    await page.getByRole('button', { name: 'one more sample' }).click()
    await expect.poll(() => deciding().samples).toBe('lacquer A, oil hard, A')
    await page.getByText('each of three samples').waitFor()
    await page.getByRole('button', { name: 'leave A out' }).click()
    await page.keyboard.press('z')
    await page.keyboard.press('z')
    await page.keyboard.press('z')
    await expect.poll(() => deciding().samples).toBe('lacquer A, lacquer B')
  })

  test.for([
    ['limit', 'Does the friction of', 'It will say whether friction keeps the limit'],
    ['regimes', 'do the surfaces of', 'No film can be predicted'],
    ['feel', 'Does a hand or a mouth notice', 'replicates of each sample tell a difference'],
    ['last', 'before the contact is worn', 'the contact is worn beyond what is allowed after'],
  ] as const)('of the kind %s has its own sentence and answer', async ([kind, sentence, answer]) => {
    const { page } = await open()
    await page.getByRole('combobox', { name: 'kind of question' }).selectOption(kind)
    await page.getByText(sentence).waitFor()
    await page.getByText(answer).first().waitFor()
    await page.getByText(/It costs/).waitFor()
  })

  test('the guide walks along the stations and leaves the address clean', async () => {
    const { page } = await open()
    await page.goto(`${server.address}/studies/runners/ask?tour=1`)
    await page.locator('.pointed').waitFor()
    for (const station of ['ask', 'plan', 'plan', 'rig-up']) {
      await page.getByRole('button', { name: 'Next' }).click()
      expect(new URL(page.url()).pathname).toBe(`/studies/runners/${station}`)
    }
    await page.keyboard.press('p')
    expect(new URL(page.url()).search).toBe('?tour=4&window=load')
    await page.getByRole('button', { name: 'Leave the guide' }).click()
    expect(new URL(page.url()).searchParams.get('tour')).toBeNull()
  })
})
