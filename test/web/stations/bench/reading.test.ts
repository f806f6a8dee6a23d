import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { noBrowser, openPage, startBrowser } from '../../startBrowser.ts'
import { type BenchServer, benchServer } from './benchServer.ts'

const frictionOn = async (page: Page): Promise<string> =>
  (await page.locator('.open-step .say').textContent())?.match(/µ = ([\d.]+)/)?.[1] ?? ''

/** Drags a place sideways by so many pixels, in steps as a hand does. */
async function drag(page: Page, place: Locator, by: number): Promise<void> {
  await place.scrollIntoViewIfNeeded()
  const box = await place.boundingBox()
  if (box === null) throw new Error('there is nothing to drag')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  for (let step = 1; step <= 8; step++) await page.mouse.move(x + (by * step) / 8, y)
  await page.mouse.up()
}

/** A busy machine reduces slowly. */
const patient = { timeout: 30_000 }

describe.skipIf(noBrowser)('reading records', () => {
  let server: BenchServer
  let browser: Browser
  beforeAll(async () => {
    const records = ['examples/lacquer/wax.csv', 'examples/lacquer/silicone-spray.csv']
    server = await benchServer({ study: 'Drawer runners', records })
    browser = await startBrowser()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await server?.end()
  })
  const open = (path: string) => openPage(browser, `${server.address}/studies/drawer-runners/${path}`)

  test('a dragged window is kept with who moved it and from what, and is taken back by z', async () => {
    const { page } = await open('read')
    await page.getByRole('link', { name: /wax\.csv/ }).click()
    await page.getByRole('option', { name: /^Step 9:/ }).click()
    const begin = page.locator('.cut-trace').getByRole('slider', { name: 'Begin of the window of step 9' })
    await begin.waitFor()
    const before = await frictionOn(page)
    await drag(page, begin, 150)
    await page.getByText(/^MK, \d{4}-\d\d-\d\d: step 9: window [\d.]+ s to 108 s, before 96.8 s to 108 s/).waitFor()
    await expect.poll(() => frictionOn(page), patient).not.toBe(before)
    await page.getByText('window moved by hand').first().waitFor()
    await page.locator('body').press('z')
    await expect.poll(() => frictionOn(page), patient).toBe(before)
    const back = page.getByRole('button', { name: 'Put the program’s window back' })
    await expect.poll(() => back.count(), patient).toBe(0)
  }, 60_000)

  test('the strip pans by drag, zooms by wheel, and lights a step that is pressed', async () => {
    const { page } = await open('read')
    await page.getByRole('link', { name: /wax\.csv/ }).click()
    const surface = page.locator('.strip-surface')
    await surface.waitFor()
    await page.getByRole('button', { name: 'Closer' }).click()
    const box = await surface.boundingBox()
    if (box === null) throw new Error('no strip')
    const reading = page.locator('.reading')
    await page.mouse.move(box.x + box.width / 2, box.y + 80)
    await expect.poll(() => reading.textContent()).toMatch(/ s · step \d+.* · torque /)
    const at = Number.parseFloat((await reading.textContent()) ?? '')
    await drag(page, surface, -100)
    await page.mouse.move(box.x + box.width / 2, box.y + 81)
    await expect.poll(async () => Number.parseFloat((await reading.textContent()) ?? '')).toBeGreaterThan(at + 5)
    await page.keyboard.down('Control')
    await page.mouse.wheel(0, -300)
    await page.keyboard.up('Control')
    await page.mouse.click(box.x + box.width / 2, box.y + 100)
    await page.getByRole('heading', { name: /^Step \d+$/ }).waitFor()
    const step = (await reading.textContent())?.match(/step (\d+)/)?.[1]
    expect(page.url()).toMatch(new RegExp(`/read/[0-9a-f]+/${step}$`))
  }, 60_000)

  test('by keyboard alone: to a record, along its points, a window moved, a remark answered', async () => {
    const { page } = await open('read')
    const press = async (key: string, times = 1): Promise<void> => {
      for (let i = 0; i < times; i++) await page.keyboard.press(key)
    }
    const tabTo = async (place: Locator): Promise<void> => {
      await place.waitFor()
      for (let i = 0; i < 120; i++) {
        await press('Tab')
        if ((await place.and(page.locator(':focus')).count()) > 0) return
      }
      throw new Error('Tab does not reach it')
    }
    await tabTo(page.getByRole('link', { name: /silicone-spray\.csv/ }))
    await press('Enter')
    await tabTo(page.getByRole('option', { name: /^Step 10:/ }))
    await press('ArrowRight', 7)
    await page.getByRole('heading', { name: 'Step 17' }).waitFor()
    const end = page.locator('.cut-trace').getByRole('slider', { name: 'End of the window of step 17' })
    await tabTo(end)
    const before = await end.getAttribute('aria-valuetext')
    await press('ArrowLeft', 20)
    expect(await end.getAttribute('aria-valuetext')).not.toBe(before)
    await press('Enter')
    await page.getByText(/: step 17: window /).waitFor()

    const answer = page
      .locator('.remark-line', { hasText: 'torque' })
      .first()
      .getByRole('button', { name: 'Answer it' })
    await page.keyboard.press('Home')
    await tabTo(answer)
    await press('Enter')
    await page.keyboard.type('The oil is that thin; these steps are left out.')
    await press('Enter')
    await page.locator('q', { hasText: 'these steps are left out' }).waitFor()
    await page.reload()
    await page.locator('q', { hasText: 'these steps are left out' }).waitFor()
  }, 90_000)

  test('a broken file says what is wrong at its line, is mended at its heading, and the others go on', async () => {
    const { page } = await open('read')
    const bad = 'Zeit;Ding;Kraft\n'.concat(
      Array.from({ length: 60 }, (_, i) => `${i / 10};0,0${i % 10};5,0\n`).join(''),
    )
    const name = '<img src=x onerror=alert(1)>.csv'
    await page.setInputFiles('input[type=file]', [
      { name, mimeType: 'text/csv', buffer: Buffer.from(bad) },
      { name: 'empty.csv', mimeType: 'text/csv', buffer: Buffer.alloc(0) },
    ])
    const row = page.locator('.upload', { hasText: name })
    await row.getByText('cannot be read yet').waitFor()
    await row.getByText('Click the heading of its column below').first().waitFor()
    expect(await row.locator('img').count()).toBe(0)
    expect(await row.getByRole('button', { name: 'Keep' }).isDisabled()).toBe(true)
    await row.getByRole('button', { name: /^Ding:/ }).click()
    await page.getByRole('menuitemradio', { name: 'torque', exact: true }).click()
    await row.getByRole('button', { name: /^Ding: torque/ }).waitFor()
    await row.getByRole('button', { name: /^Ding:/ }).click()
    await page.getByRole('menuitemradio', { name: 'mN·m', exact: true }).click()
    await row.getByRole('button', { name: /^Ding: torque, mN·m/ }).waitFor()
    await page.locator('.upload', { hasText: 'empty.csv' }).getByRole('alert').waitFor()
  }, 60_000)
})
