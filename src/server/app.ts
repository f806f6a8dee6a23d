import { Hono } from 'hono'
import type { Problem } from '../core/terms/index.ts'
import { problemAnswer } from './answer/problemAnswer.ts'
import type { ServerDesk } from './desk.ts'
import { ownAddress } from './guard/ownAddress.ts'
import { dataPolicy, safeHeaders } from './guard/safeHeaders.ts'
import { faultProblem } from './jobs/jobBoard.ts'
import { pageRoutes } from './page/pageRoutes.ts'
import { beyondRoutes } from './routes/beyondRoutes.ts'
import { changeRoutes } from './routes/changeRoutes.ts'
import { detailRoutes } from './routes/detailRoutes.ts'
import { eventRoutes } from './routes/eventRoutes.ts'
import { labRoutes } from './routes/labRoutes.ts'
import { openApiRoutes } from './routes/openApiRoutes.ts'
import { paperRoutes } from './routes/paperRoutes.ts'
import { recordRoutes } from './routes/recordRoutes.ts'
import { reportRoutes } from './routes/reportRoutes.ts'
import { setupRoutes } from './routes/setupRoutes.ts'
import { studyRoutes } from './routes/studyRoutes.ts'
import { uploadRoutes } from './routes/uploadRoutes.ts'

const allRoutes = [
  labRoutes,
  studyRoutes,
  paperRoutes,
  recordRoutes,
  detailRoutes,
  beyondRoutes,
  changeRoutes,
  uploadRoutes,
  setupRoutes,
  reportRoutes,
  eventRoutes,
  openApiRoutes,
] as const

/** What the app is made from. */
export interface AppArgs {
  readonly desk: ServerDesk
  /** Folder of the built page. */
  readonly page: string
  /** Port on which it answers, known once it listens. */
  readonly port: () => number
  readonly onFault: (error: unknown) => void
}

/** All routes behind one door: first it is asked who knocks, and every answer bears the same safe headers. */
export function appOf({ desk, page, port, onFault }: AppArgs): Hono {
  const app = new Hono()
  app.use('*', async (c, next) => {
    const own = ownAddress(
      {
        host: c.req.header('host'),
        origin: c.req.header('origin'),
        site: c.req.header('sec-fetch-site'),
        path: c.req.path,
      },
      port(),
    )
    if (own.ok) await next()
    else c.res = problemAnswer(own.problems)
    for (const [name, value] of Object.entries(safeHeaders)) c.res.headers.set(name, value)
    if (!c.res.headers.has('content-security-policy')) c.res.headers.set('content-security-policy', dataPolicy)
  })
  for (const add of allRoutes) add(app, desk)
  app.all('/api/*', (c) => problemAnswer([noRoute(c.req.path)]))
  pageRoutes(app, page)
  app.notFound((c) => problemAnswer([noRoute(c.req.path)]))
  app.onError((error) => {
    onFault(error)
    return problemAnswer([faultProblem])
  })
  return app
}

const noRoute = (path: string): Problem => ({
  kind: 'routeMissing',
  class: 'wrongUse',
  place: { name: 'path', cell: path.slice(0, 200) },
  what: 'There is nothing at this address, or not for this method.',
  mend: 'The page /api lists what there is.',
})
