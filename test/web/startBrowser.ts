import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium, type Page } from 'playwright-core'
import { chromiumFlags, chromiumProgram } from '../../scripts/chromiumForTests.ts'

/** Why a test in a browser is left out, or nothing where one is there. */
export const noBrowser =
  chromiumProgram() === undefined ? 'Chromium is not installed (Debian: apt-get install chromium)' : undefined

/** A real Chromium without a window, that looks for nothing on its own. */
export const startBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: chromiumProgram(), args: [...chromiumFlags] })

export interface OpenPage {
  readonly page: Page
  /** What the page complained of: errors, and warnings of the browser about it. */
  readonly complaints: string[]
}

/** A page in a context of its own, at an address, light or dark. */
export async function openPage(
  browser: Browser,
  address: string,
  { width = 1280, height = 900, look = 'light' }: { width?: number; height?: number; look?: 'light' | 'dark' } = {},
): Promise<OpenPage> {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme: look, reducedMotion: 'reduce' })
  const page = await context.newPage()
  page.setDefaultTimeout(8000)
  const complaints: string[] = []
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  await page.goto(address)
  return { page, complaints }
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What automatic checks find wrong for people who see, hear or move otherwise; one line each. */
export async function accessFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  const found: string = await page.evaluate(
    `axe.run(document, { resultTypes: ['violations'] }).then(({ violations }) => JSON.stringify(violations.map(
      ({ id, nodes }) => id + ': ' + nodes.map(({ target, failureSummary }) => target + ' ' + failureSummary).join(' | '))))`,
  )
  return JSON.parse(found)
}
