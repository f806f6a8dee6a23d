import type { Hono } from 'hono'
import { bodiesUsed, isDemo, labGlance, labHistoryPage } from '../../bench/serve/index.ts'
import { done } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { paperIn } from './inContract.ts'

/** The lab as a whole. */
export function labRoutes(app: Hono, { held }: ServerDesk): void {
  bind(app, routes.lab, async () => {
    const glance = await labGlance(held)
    if (!glance.ok) return glance
    const { about, where, engine, counts, people, papers } = glance.value
    return done({
      ...{ id: about.id, name: about.title, where, engine, demo: isDemo(about), program: held.outside.program },
      ...{ counts, people: [...people], papers: papers.map(paperIn) },
    })
  })
  bind(app, routes.history, async ({ query }) => {
    const { after, limit, newest } = query
    const page = await labHistoryPage(held, { after, limit, newest: newest === 'true' })
    return page.ok ? done({ entries: page.value.map((entry) => ({ ...entry })), last: held.pulse.last }) : page
  })
  bind(app, routes.bodies, async () => bodiesUsed(held))
}
