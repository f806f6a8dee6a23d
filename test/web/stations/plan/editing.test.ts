import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type PaperServer, paperServer } from '../../paperServer.ts'
import { noBrowser, openPage, startBrowser } from '../../startBrowser.ts'

describe.skipIf(noBrowser)('sentences of the plan', () => {
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

  const open = (search = '') => openPage(browser, `${server.address}/studies/runners/plan${search}`)
  const quantity = (page: Page, name: string) => page.getByRole('spinbutton', { name })
  const kept = (): Record<string, Record<string, string>> =>
    server.question('runners')?.content as Record<string, Record<string, string>> // written by the page as sections

  test('by keyboard alone: typed with a decimal comma, kept, undone and done again', async () => {
    const { page, complaints } = await open()
    const slowest = quantity(page, 'slowest sliding speed')
    await slowest.focus()
    await page.keyboard.press('Enter')
    await page.keyboard.type('0,5 mm/s')
    await page.keyboard.press('Enter')
    await page.getByText(/^kept, version/).waitFor()
    await expect.poll(() => kept().ask.slowest).toBe('0,5 mm/s')
    expect(await slowest.getAttribute('aria-valuetext')).toBe('0,5 mm/s')
    expect(await slowest.getAttribute('aria-valuenow')).toBe('500')
    expect(await page.locator(':focus').getAttribute('aria-label')).toBe('slowest sliding speed')
    await page.keyboard.press('z')
    await expect.poll(() => kept().ask.slowest).toBe('0.1 mm/s')
    await page.keyboard.press('Shift+Z')
    await expect.poll(() => kept().ask.slowest).toBe('0,5 mm/s')
    await page.keyboard.press('z')
    await expect.poll(() => kept().ask.slowest).toBe('0.1 mm/s')
    expect(complaints).toEqual([])
  })

  test('a unit of its own is understood, an impossible value refused with its reason, Escape leaves', async () => {
    const { page } = await open()
    const fastest = quantity(page, 'fastest sliding speed')
    await fastest.click()
    const field = page.getByRole('textbox', { name: 'fastest sliding speed' })
    await field.fill('3 N')
    await field.press('Enter')
    await page.getByText('"N" is a unit of force, not of velocity.').waitFor()
    await field.fill('0.02 mm/s')
    await field.press('Enter')
    await page.getByText('At least 100 µm/s.').waitFor()
    await field.press('Escape')
    expect(await fastest.textContent()).toBe('200 mm/s')
    await fastest.click()
    await field.fill('0.3 m/s')
    await field.press('Enter')
    expect(await fastest.textContent()).toBe('0.3 m/s')
    await page.keyboard.press('z')
    await expect.poll(() => fastest.textContent()).toBe('200 mm/s')
  })

  test('arrows step to round numbers, a drag scrubs, the picture follows', async () => {
    const { page } = await open()
    const load = quantity(page, 'axial force')
    await load.focus()
    await page.keyboard.press('ArrowUp')
    expect(await load.textContent()).toBe('2.5 N')
    await page.locator('svg text', { hasText: 'Which friction can be measured at 2.5 N' }).waitFor()
    const box = await load.boundingBox()
    if (box === null) throw new Error('the load must be on the page')
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x + 60, y, { steps: 5 })
    await page.locator('svg text', { hasText: 'Which friction can be measured at 4.6 N' }).waitFor()
    await page.mouse.up()
    await expect.poll(() => kept().ask.axialForce).toBe('4.6 N')
    await page.getByRole('button', { name: 'Let the plan choose the load' }).click()
    await expect.poll(() => kept().ask.axialForce).toBeUndefined()
  })

  test('every computed number answers why, at an address of its own', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: /47 MPa/ }).click()
    const note = page.getByRole('note', { name: /peak pressure/ })
    await note.waitFor()
    expect(new URL(page.url()).searchParams.get('why')).toBe('pressure')
    expect(await note.textContent()).toMatch(/W.*667 mN.*E\*.*2\.81 GPa.*Hertz.*Valid:.*Changes with:/)
    await page.reload()
    await note.waitFor()
    await page.keyboard.press('Escape')
    await note.waitFor({ state: 'detached' })
    const numbers = await page.locator('button.computed').count()
    for (let i = 0; i < numbers; i++) {
      await page.locator('button.computed').nth(i).click()
      expect(await page.locator('.why').count()).toBe(1)
      await page.keyboard.press('Escape')
    }
    expect(numbers).toBeGreaterThan(7)
  })

  test('the load line and the ends of the speeds are dragged in the window', async () => {
    const { page } = await open('?window=load')
    const line = page.getByRole('slider', { name: 'axial force' })
    const box = await line.boundingBox()
    if (box === null) throw new Error('the load line must be on the page')
    await page.mouse.move(box.x + 200, box.y + 9)
    await page.mouse.down()
    await page.mouse.move(box.x + 200, box.y - 40, { steps: 4 })
    await page.mouse.up()
    await expect.poll(() => Number(kept().ask.axialForce?.replace(' N', ''))).toBeGreaterThan(2.5)
    const slow = page.getByRole('slider', { name: 'slowest sliding speed' })
    await slow.focus()
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => kept().ask.slowest).toBe('120 µm/s')
    await page.keyboard.press('z')
    await page.keyboard.press('z')
    await expect.poll(() => kept().ask.axialForce).toBeUndefined()
  })

  test('another fixture brings its own sentence and sizes, and can be undone', async () => {
    const { page } = await open()
    await page.getByRole('combobox', { name: 'kind of fixture' }).selectOption('ring on plate')
    await page.getByText('Press a ring of').waitFor()
    await expect.poll(() => kept().fixture).toMatchObject({ kind: 'ring on plate', outerRadius: '15 mm' })
    expect(String(kept().assumed)).toContain('fixture.outerRadius')
    await page.keyboard.press('z')
    await expect.poll(() => kept().fixture).toMatchObject({ kind: 'balls on plate', ballDiameter: '6.35 mm' })
    expect(kept().fixture).not.toHaveProperty('outerRadius')
  })

  test('defaults are confirmed with one press', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/fresh/plan`)
    await page.getByText('Nothing of this is yours yet').waitFor()
    await page.getByRole('button', { name: 'All in lighter ink is right' }).click()
    await expect.poll(() => server.question('fresh')?.version).toBe(1)
    expect(await page.getByRole('spinbutton', { name: 'slowest sliding speed', exact: true }).count()).toBe(1)
    const content = server.question('fresh')?.content as { assumed?: string } | undefined
    const assumed = content?.assumed
    expect(assumed).not.toContain('fixture.')
    expect(assumed).toContain('rig.torque.floor')
  })

  test('a liquid comes between the bodies by its name, with viscosity and film', async () => {
    const { page } = await open('?more=bodies')
    await page.getByRole('button', { name: 'dry' }).click()
    await page.getByText('The film is').waitFor()
    // Water at 23 °C: 0.9321 mPa·s (IAPWS 2008).
    const viscosity = quantity(page, 'viscosity of the liquid')
    expect(await viscosity.textContent()).toBe('0.9321 mPa·s')
    await page.getByRole('button', { name: 'liquid between them: water' }).click()
    await page.keyboard.type('glycerol 60 %')
    await page.keyboard.press('Enter')
    await expect.poll(async () => Number.parseFloat((await viscosity.textContent()) ?? '')).toBeGreaterThan(5)
    await page.getByRole('button', { name: 'Take the liquid out' }).click()
    await page.getByText('It slides dry').waitFor()
    await expect.poll(() => kept().liquid).toBeUndefined()
  })

  test('on paper only the plan is left: no tools, black on white', async () => {
    const { page } = await open()
    await page.locator('.picture svg').nth(3).waitFor()
    await page.emulateMedia({ media: 'print' })
    for (const name of ['.tools', '.rail', '.undo-line'])
      expect(await page.locator(name).first().isVisible()).toBe(false)
    expect(await page.locator('body').evaluate('(getComputedStyle(document.body).color)')).toBe('rgb(0, 0, 0)')
    expect(await page.locator('.say').first().isVisible()).toBe(true)
    // A night-blue screen prints black on white too, pictures and all.
    await page.emulateMedia({ media: 'screen' })
    await page.keyboard.press('l')
    const paper = page.locator('.picture svg > rect').first()
    await expect.poll(() => paper.getAttribute('fill')).toBe('#0f1a2b')
    await page.emulateMedia({ media: 'print' })
    await expect.poll(() => paper.getAttribute('fill')).toBe('#ffffff')
  })

  test('a page that is not there says so', async () => {
    const { page } = await openPage(browser, `${server.address}/studies/runners/nowhere`)
    await page.getByText('No page lies at /studies/runners/nowhere').waitFor()
  })
})
