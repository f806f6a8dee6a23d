import type { Hono } from 'hono'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { problemAnswer } from '../answer/problemAnswer.ts'
import { versionSeen } from '../answer/version.ts'
import { bind } from '../bind.ts'
import { type JobDone, routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import type { TaskEnd } from '../threads/taskTalk.ts'
import { paperIn } from './inContract.ts'
import { supersededProblem } from './paperRoutes.ts'
import { findingsIn } from './verifyWords.ts'

/** What changes a record, or proves it: jobs all of them. */
export function changeRoutes(app: Hono, desk: ServerDesk): void {
  const { held, pool, jobs } = desk
  bind(app, routes.mends, async ({ params, body, request }) => {
    const after = versionSeen(request.headers)
    if (!after.ok) return after
    const record = await held.lab.records.get(params.record)
    if (!record.ok) return record
    const paper = await held.lab.paper({ subject: 'record', subjectId: record.value.id, kind: 'mends' })
    if (!paper.ok) return paper
    if ((paper.value?.version ?? 0) !== after.value) {
      const current = paper.value === undefined ? null : paperIn(paper.value)
      return done(problemAnswer([supersededProblem('mends')], current))
    }
    const words = { ...body, record: record.value.id, after: after.value }
    const job = jobs.begin('mends', async (progress, stop) =>
      told(await pool.run('mend', words, { progress, stop }), () => ({ record: words.record })),
    )
    return done({ job })
  })
  bind(app, routes.amend, async ({ params, body }) => {
    if (body.why.trim() === '') return failed(withoutReason)
    const record = await held.lab.records.get(params.record)
    if (!record.ok) return record
    const { setup, study, sample, replicate, mountedBy, ballSet, day, by, why } = body
    const { id } = record.value
    const args = {
      ...{ word: id, setupText: setup, names: { study, sample } },
      facts: { replicate, mountedBy, ballSet, day },
    }
    const job = jobs.begin('amend', async (progress, stop) =>
      told(await pool.run('amend', args, { progress, stop, by: { who: by, why } }), () => ({ record: id })),
    )
    return done({ job })
  })
  bind(app, routes.verify, async ({ params }) => {
    const record = await held.lab.records.get(params.record)
    if (!record.ok) return record
    const { id } = record.value
    const job = jobs.begin('verify', async (progress, stop) =>
      told(await pool.run('verify', { record: id }, { progress, stop }), (verification) => ({
        record: id,
        verified: findingsIn(verification),
      })),
    )
    return done({ job })
  })
}

/** The end of a task in the words of a job. */
function told<T>(end: TaskEnd<T>, words: (value: T) => JobDone): TaskEnd<JobDone> {
  if (end.stopped) return end
  const outcome: Outcome<JobDone> = end.outcome.ok ? done(words(end.outcome.value)) : end.outcome
  return { stopped: false, outcome }
}

const withoutReason = {
  kind: 'reasonMissing',
  class: 'badInput' as const,
  place: { name: 'why' },
  what: 'A correction needs a reason.',
  mend: 'Say in a few words why it is corrected.',
}
