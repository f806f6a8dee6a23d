import type { Hono } from 'hono'
import { cautionsOf, studyReplicates } from '../../bench/compare/index.ts'
import { makeStudy, studiesAtAGlance, studyShelf } from '../../bench/serve/index.ts'
import { done } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { noteIn, recordBriefIn, studyBriefIn, titledIn } from './inContract.ts'

/** Studies with their records. */
export function studyRoutes(app: Hono, { held }: ServerDesk): void {
  bind(app, routes.studies, async () => {
    const glances = await studiesAtAGlance(held)
    return glances.ok ? done({ studies: glances.value.map(studyBriefIn) }) : glances
  })
  bind(app, routes.makeStudy, async ({ body }) => {
    const made = await makeStudy(held, body)
    return made.ok ? done(studyBriefIn({ study: made.value, samples: 0, records: 0, reduced: 0, papers: [] })) : made
  })
  bind(app, routes.study, async ({ params }) => {
    const shelf = await studyShelf(held, params.study)
    if (!shelf.ok) return shelf
    const { study, samples, records, papers } = shelf.value
    return done({
      ...titledIn(study),
      samples: samples.map(titledIn),
      records: records.map(recordBriefIn),
      papers: papers.map(noteIn),
    })
  })
  bind(app, routes.replicates, async ({ params }) => {
    const gathered = await studyReplicates(held.lab, params.study)
    if (!gathered.ok) return gathered
    const { title, replicates, records, left, systems } = gathered.value
    return done({
      title,
      records: records.map((record) => ({ ...record })),
      left: left.map((one) => ({ ...one })),
      cautions: cautionsOf(systems).map(({ samples, sentence }) => ({ samples: [...samples], sentence })),
      replicates: replicates.map(({ points, ...replicate }) => ({
        ...replicate,
        points: points.map(({ shared, ...point }) => ({ ...point, shared: { ...shared } })),
      })),
    })
  })
}
