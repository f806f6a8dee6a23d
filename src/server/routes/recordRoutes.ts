import type { Hono } from 'hono'
import type { HeldColumns, RecordView } from '../../bench/serve/index.ts'
import { recordView, traceOf, windowsOf } from '../../bench/serve/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { type RecordAnswer, routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { paperIn, recordBriefIn } from './inContract.ts'

/** One record: what is kept of it, and its raw channels. */
export function recordRoutes(app: Hono, desk: ServerDesk): void {
  const { held } = desk
  bind(app, routes.record, async ({ params }) => {
    const view = await recordView(held, params.record)
    return view.ok ? done(recordIn(view.value)) : view
  })
  bind(app, routes.trace, async ({ params, query }) => {
    const columns = await columnsOf(desk, params.record)
    if (!columns.ok) return columns
    const { from, to } = query
    if (from !== undefined && to !== undefined && !(to >= from)) return failed(backwards(from, to))
    const channels = query.channels?.split(',').map((name) => name.trim())
    return done(traceOf(columns.value, { ...query, channels }))
  })
}

/** Columns of a record as the result that counts read them. */
export async function columnsOf({ held, columns }: ServerDesk, word: string): Promise<Outcome<HeldColumns>> {
  const view = await held.counting(word)
  return view.ok ? columns.get(view.value.record.id, view.value.result.id) : view
}

function recordIn(view: RecordView): RecordAnswer {
  const { versions, results, papers, document, read, setupText, record } = view
  return {
    record: recordBriefIn(view.shelf),
    result: document,
    setup:
      setupText === null || read === undefined || record.setup === null
        ? null
        : { id: record.setup, text: setupText, read: read.reduced.setup },
    versions: versions.map(({ version, name, study, sample, replicate, mountedBy, ballSet, day, setup, change }) => ({
      ...{ version, name, study, sample, replicate, mountedBy, ballSet, day, setup },
      change: { ...change },
    })),
    results: results.map((result) => ({
      ...{ id: result.id, kind: result.kind, program: result.origin.program, setup: result.origin.setup },
      windows: windowsOf(result).map((window) => ({ ...window })),
      change: { ...result.change },
    })),
    papers: papers.map(paperIn),
  }
}

const backwards = (from: number, to: number): Problem => ({
  kind: 'fieldWrong',
  class: 'wrongUse',
  place: { name: 'to', cell: String(to) },
  what: `"to" lies before "from", ${from} s.`,
  mend: 'Let the stretch end after it begins.',
})
