import { readFileSync } from 'node:fs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { noBrowser, openPage, startBrowser } from '../../startBrowser.ts'
import { type BenchServer, benchServer } from './benchServer.ts'

describe.skipIf(noBrowser)('the whole job', () => {
  let server: BenchServer
  let browser: Browser
  beforeAll(async () => {
    server = await benchServer()
    browser = await startBrowser()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })

  test('from a fresh lab to a PDF, without the terminal', async () => {
    const { page } = await openPage(browser, server.address)
    await page.getByLabel('Begin a study called').fill('Drawer runners')
    await page.getByRole('button', { name: 'Begin' }).click()
    await page.getByRole('link', { name: /^Rig up/ }).click()
    // The sheet: a step that asks for yes, one that asks for a reading.
    await page.getByRole('button', { name: 'Done, go on' }).click()
    await page.getByRole('button', { name: 'yes' }).click()
    await page.getByRole('button', { name: 'Done, go on' }).click()
    await page.getByRole('link', { name: /look at the axial force over the angle/ }).click()
    const reading = page.getByLabel(/^ripple of the axial force/)
    await reading.fill('8 %')
    await reading.press('Enter')
    await page.getByText('Outside what is acceptable. Mount again').waitFor()
    await page.getByText(/^kept, version/).waitFor()

    await page.getByRole('link', { name: /^Read/ }).click()
    await page.setInputFiles('input[type=file]', [
      'examples/lacquer/lacquer-a-1.csv',
      'examples/lacquer/lacquer-a-2.csv',
    ])
    await page.getByText('ready to be kept: 1,320 rows').first().waitFor()
    await page.getByRole('button', { name: 'Write one' }).click()
    await page.getByLabel('Setup as text').fill(readFileSync('examples/lacquer/lacquer-a-1.setup.yaml', 'utf8'))
    await page.getByText('steel ball, 100Cr6 on lacquer A on beech, dry, 5 N').waitFor()
    expect(await page.getByLabel('Sample of lacquer-a-1.csv').inputValue()).toBe('lacquer-a')
    expect(await page.getByLabel('Replicate of lacquer-a-2.csv').inputValue()).toBe('2')
    await page.getByLabel('Ball set of lacquer-a-1.csv').fill('K7')
    await page.getByRole('button', { name: 'Keep all 2' }).click()
    await page.getByRole('link', { name: 'Open it' }).first().click()

    await page.getByText(/^Believe this curve from 500 µm\/s/).waitFor()
    await page.getByRole('option', { name: /^Step 3:/ }).click()
    await page.getByRole('heading', { name: 'Step 3' }).waitFor()
    await page.getByRole('img', { name: /^Trace of step 3/ }).waitFor()

    await page.getByRole('link', { name: /^Report/ }).click()
    const paper = page.frameLocator('iframe')
    await paper.getByRole('heading', { name: 'lacquer A, mounting 1' }).waitFor()
    await paper.getByText('As found at the rig').first().waitFor()
    await page.getByText('Say how both bodies were cleaned').waitFor()
    await page.getByRole('button', { name: 'Say it here' }).first().click()
    await page.getByRole('textbox', { name: 'Cleaning and storage before the test' }).fill('Ethanol, five minutes')
    await page.getByRole('button', { name: 'Keep it' }).click()
    await paper.getByText('Ethanol, five minutes').waitFor()

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Report as PDF' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('lacquer-a-1.pdf')
    const pdf = readFileSync(await download.path())
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
    expect(pdf.length).toBeGreaterThan(50_000)

    await page.getByRole('button', { name: 'Verify the record' }).click()
    await page.getByText('every byte is the same').waitFor()

    const [zip] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Study as data package' }).click(),
    ])
    expect(
      readFileSync(await zip.path())
        .subarray(0, 2)
        .toString(),
    ).toBe('PK')

    await page.getByRole('link', { name: 'Lab', exact: true }).click()
    await page.getByRole('link', { name: 'Balls and plates' }).click()
    await page.getByRole('row', { name: /^K7/ }).waitFor()
  }, 120_000)
})
