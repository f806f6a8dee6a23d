import type { Hono } from 'hono'
import type { StepDetail } from '../../bench/serve/index.ts'
import { done } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes, type StepAnswer } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { columnsOf } from './recordRoutes.ts'

/** Pictures of a record that take some computing. */
export function detailRoutes(app: Hono, desk: ServerDesk): void {
  const { pool } = desk
  bind(app, routes.stretches, async ({ params }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const stretches = await pool.quickly('stretches', { columns: columns.value })
    if (!stretches.ok) return stretches
    const { time, rows } = columns.value
    return done({ time: rows === 0 ? [0, 0] : [time[0], time[rows - 1]], stretches: [...stretches.value] })
  })
  bind(app, routes.turns, async ({ params, query }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const map = await pool.quickly('turns', { columns: columns.value, quantity: query.quantity })
    if (!map.ok) return map
    const { columns: across, rows, turns, mean, range, steps } = map.value
    return done({
      ...{ quantity: query.quantity, columns: across, rows, turns: [...turns] },
      mean: known(mean),
      range: range === null ? null : [range[0], range[1]],
      steps: steps.map((step) => ({ ...step })),
    })
  })
  bind(app, routes.step, async ({ params }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const detail = await pool.quickly('step', { columns: columns.value, step: params.step })
    return detail.ok ? done(stepIn(detail.value, params.step)) : detail
  })
}

/** Rows that a picture of a step needs. */
const mostRows = 4000

function stepIn({ series, point, memory, interval }: StepDetail, step: number): StepAnswer {
  const count = series.time.length
  const every = Math.max(1, Math.ceil(count / mostRows))
  const thinned = (values: ArrayLike<number>): number[] =>
    Array.from({ length: Math.ceil(count / every) }, (_, i) => values[i * every])
  const at = (row: number): number => series.time[Math.max(0, Math.min(row, count - 1))]
  return {
    step,
    point,
    rows: {
      ...{ count, every, time: thinned(series.time) },
      angle: known(thinned(series.angle)),
      friction: known(thinned(series.friction)),
      axialForce: known(thinned(series.axialForce)),
      gap: series.gap === null ? null : known(thinned(series.gap)),
    },
    cut: { begin: at(series.begin), kept: at(series.kept), end: at(series.end - 1) },
    memory:
      memory === null
        ? null
        : {
            ...{ correlations: [...memory.correlations], readings: memory.readings, lag: interval },
            time: point.autocorrelationTime,
          },
    budget: budgetOf(point),
  }
}

/** What makes the uncertainty of one point: its own part and each shared one, and their parts of the variance. */
function budgetOf({ friction, ownUncertainty, shared }: StepDetail['point']): StepAnswer['budget'] {
  const parts = [['own', ownUncertainty ?? 0] as const, ...Object.entries(shared)]
  const total = parts.reduce((sum, [, part]) => sum + part * part, 0)
  const size = Math.abs(friction ?? Number.NaN)
  return parts
    .filter(([, part]) => part > 0)
    .map(([source, part]) => ({ source, relative: part / size, share: (part * part) / total }))
    .sort((a, b) => b.share - a.share)
}

const known = (values: ArrayLike<number>): (number | null)[] =>
  Array.from(values, (value) => (Number.isFinite(value) ? value : null))
