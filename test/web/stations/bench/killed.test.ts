import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { noBrowser, openPage, startBrowser } from '../../startBrowser.ts'
import { type BenchServer, benchServer } from './benchServer.ts'

/** The wax record many times over, its clock running on: long enough that its sending can be caught. */
function longRecord(times: number): Buffer {
  const [line1, line2, head, ...rows] = readFileSync('examples/lacquer/wax.csv', 'utf8').trimEnd().split('\n')
  const cells = rows.filter((row) => /^\d/.test(row)).map((row) => row.split(','))
  const length = Number(cells.at(-1)?.[1]) + 1
  const pieces = Array.from({ length: times }, (_, turn) =>
    cells
      .map(([step, time, ...others]) => [Number(step) + 17 * turn, Number(time) + turn * length, ...others].join(','))
      .join('\n'),
  )
  const units = rows.find((row) => !/^\d/.test(row))
  return Buffer.from([line1, line2, head, ...(units === undefined ? [] : [units]), ...pieces, ''].join('\n'))
}

describe.skipIf(noBrowser)('a server that dies', () => {
  let server: BenchServer
  let browser: Browser
  beforeAll(async () => {
    server = await benchServer({ study: 'Drawer runners', records: ['examples/lacquer/wax.csv'] })
    browser = await startBrowser()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })

  test('in the middle of an upload: the page says so, and sends it again when it is back', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/drawer-runners/read`)
    const session = await page.context().newCDPSession(page)
    await session.send('Network.enable')
    const slow = { offline: false, latency: 0, downloadThroughput: -1, uploadThroughput: 2e6 }
    await session.send('Network.emulateNetworkConditions', slow)
    const bytes = longRecord(100)
    expect(bytes.length).toBeGreaterThan(10e6)
    const file = join(server.lab, '..', 'long-1.csv')
    writeFileSync(file, bytes)
    await page.setInputFiles('input[type=file]', file)
    const row = page.locator('.upload', { hasText: 'long-1.csv' })
    await row.getByText(/being sent, ([1-9]|[1-8]\d) %/).waitFor()
    await server.kill()
    await row.getByText('the server is away; it is sent again when it is back').waitFor()
    await session.send('Network.emulateNetworkConditions', { ...slow, uploadThroughput: -1 })
    await server.again()
    await row.getByText('ready to be kept: 204,000 rows').waitFor({ timeout: 40_000 })
    await page
      .getByLabel('or one that the lab has')
      .or(page.getByLabel('Take one that the lab has'))
      .selectOption({ index: 1 })
    await row.getByRole('button', { name: 'Keep' }).click()
    await row.getByRole('link', { name: 'Open it' }).waitFor({ timeout: 120_000 })
  }, 240_000)

  test('at the rig: ticks go on, and are kept when it is back', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/drawer-runners/rig-up`)
    await page.getByRole('button', { name: 'Done, go on' }).click()
    await page.getByText(/^kept, version 1/).waitFor()
    await server.kill()
    await page.getByRole('button', { name: 'Done, go on' }).click()
    await page.getByText('kept in this browser until the server is back').waitFor()
    await page.getByText('2 of 17 steps done').waitFor()
    await server.again()
    await page.getByText(/^kept, version [23]/).waitFor({ timeout: 20_000 })
    await page.reload()
    await page.getByText('2 of 17 steps done').waitFor()
  }, 90_000)

  test('while a remark is answered: the answer waits in the page, and is kept when it is back', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/drawer-runners/read`)
    await page.getByRole('link', { name: /wax\.csv/ }).click()
    await page.getByRole('button', { name: 'Answer it' }).first().click()
    await server.kill()
    await page.keyboard.type('The zero was taken by hand.')
    await page.keyboard.press('Enter')
    await page.getByText(/^The server is away; kept in this page until it is back/).waitFor()
    await server.again()
    await page.locator('q', { hasText: 'The zero was taken by hand.' }).waitFor({ timeout: 60_000 })
  }, 120_000)
})
