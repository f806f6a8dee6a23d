import type { Hono } from 'hono'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { type Job, routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { eventStream } from './eventStream.ts'
import { pulseEvents } from './labNews.ts'

/** What happens, as it happens. */
export function eventRoutes(app: Hono, desk: ServerDesk): void {
  const { jobs, closing } = desk
  const news = pulseEvents(desk)
  bind(app, routes.events, async ({ request }) =>
    done(eventStream(request, closing, (send) => news.listen((event) => send('changed', event, event.number)))),
  )
  bind(app, routes.job, async ({ params }) => jobOr404(jobs.get(params.job)))
  bind(app, routes.stopJob, async ({ params }) => (jobs.stop(params.job) ? done(null) : failed(noJob)))
  bind(app, routes.jobEvents, async ({ params, request }) => {
    if (jobs.get(params.job) === undefined) return failed(noJob)
    return done(
      eventStream(request, closing, (send, close) =>
        jobs.listen(params.job, (job) => {
          tell(job, send)
          if (job.state !== 'running') close()
        }),
      ),
    )
  })
}

function tell(job: Job, send: (event: string, data: unknown) => void): void {
  if (job.state === 'running') send('progress', job.progress)
  else if (job.state === 'done') send('done', job.done)
  else if (job.state === 'failed') send('failed', job.problem)
  else send('stopped', {})
}

const jobOr404 = (job: Job | undefined): Outcome<Job> => (job === undefined ? failed(noJob) : done(job))

const noJob: Problem = {
  kind: 'notThere',
  class: 'wrongUse',
  place: { name: 'job' },
  what: 'There is no such job; it may have ended before the server was started anew.',
  mend: 'Look at the record: what was kept is there.',
}
