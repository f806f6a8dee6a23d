import type { Hono } from 'hono'
import { done } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { columnsOf } from './recordRoutes.ts'

/** What a record says beyond its friction curve; each question is worked out on a thread. */
export function beyondRoutes(app: Hono, desk: ServerDesk): void {
  bind(app, routes.beyond, async ({ params }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const beyond = await desk.pool.quickly('beyond', { columns: columns.value })
    if (!beyond.ok) return beyond
    const { parts, missing } = beyond.value
    return done({
      parts: parts.map(({ finding: { heading, sentences, table }, figure }) => ({
        heading,
        sentences: [...sentences],
        table:
          table === undefined
            ? null
            : { caption: table.caption, columns: [...table.columns], rows: table.rows.map((row) => [...row]) },
        picture:
          figure === null ? null : { caption: figure.caption, light: figure.svg, dark: figure.darkSvg ?? figure.svg },
      })),
      missing: missing.map((part) => ({ ...part })),
    })
  })
  bind(app, routes.turnChange, async ({ params, query }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const change = await desk.pool.quickly('turnChange', { columns: columns.value, quantity: query.quantity })
    if (!change.ok) return change
    const { sentences, pictures } = change.value
    return done({ sentences: [...sentences], pictures: pictures.map((picture) => ({ ...picture })) })
  })
}
