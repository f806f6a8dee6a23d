import type { Page } from 'playwright-core'

/** Frames that are measured, and those before that warm the engine up. */
const frames = { measured: 120, warm: 40 } as const

/** What one move of the hand took, ms. */
export interface FollowTime {
  /** From the move to the laid-out new pictures, by the clock; on a busy machine others' work is in it. */
  readonly clock: number
  /** The page's own work for it: script, style, layout and drawing commands, by processor time. */
  readonly work: number
}

/**
 * What it takes the pictures of a plan to follow the hand, for each of many moves of the load. The page must show the plan of a
 * question.
 */
export async function followTimes(page: Page): Promise<readonly FollowTime[]> {
  const load = page.getByRole('spinbutton', { name: 'axial force' })
  await page.locator('.picture svg').nth(3).waitFor()
  const box = await load.boundingBox()
  if (box === null) throw new Error('the load must be on the page')
  const session = await page.context().newCDPSession(page)
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  const worked = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics')
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN)
  }
  const from = box.x + box.width / 2
  await page.mouse.move(from, box.y + box.height / 2)
  await page.mouse.down()
  const times: FollowTime[] = []
  for (let i = 0; i < frames.measured + frames.warm; i++) {
    const before = await worked()
    // Every move goes on by some 3 %, up and down, so that each brings another load.
    const clock: number = await page.evaluate(moved(from + 10 + 3 * Math.abs((i % 60) - 30), box.y))
    // Two places of the hand may round to the same load: then there was nothing to follow.
    if (clock >= 0) times.push({ clock, work: (await worked()) - before })
  }
  await page.mouse.up()
  return times.slice(Math.min(frames.warm, times.length - 1))
}

const moved = (x: number, y: number): string => `(async () => {
  const hand = document.querySelector('[aria-label^="axial force"]')
  const drawn = document.querySelector('.picture .drawn')
  await new Promise(requestAnimationFrame)
  const changed = new Promise((resolve) =>
    new MutationObserver((_, watch) => (watch.disconnect(), resolve())).observe(drawn, { childList: true }))
  const start = performance.now()
  hand.dispatchEvent(new PointerEvent('pointermove', { bubbles: true, clientX: ${x}, clientY: ${y} }))
  const followed = await Promise.race([changed.then(() => true), new Promise((resolve) => setTimeout(resolve, 400))])
  if (!followed) return -1
  for (const svg of document.querySelectorAll('.picture svg')) svg.getBoundingClientRect()
  const clock = performance.now() - start
  await new Promise(requestAnimationFrame)
  await new Promise((resolve) => setTimeout(resolve))
  return clock
})()`
