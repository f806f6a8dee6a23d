import type { Hono } from 'hono'
import { keepPaper, type PaperWord, paperAt, paperSubject } from '../../bench/serve/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { problemAnswer } from '../answer/problemAnswer.ts'
import { versionSeen, versionTag } from '../answer/version.ts'
import { bind, jsonAnswer } from '../bind.ts'
import { type NewPaper, type Paper, routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { paperIn } from './inContract.ts'

/** Papers of studies, records and the lab. */
export function paperRoutes(app: Hono, desk: ServerDesk): void {
  bind(app, routes.studyPaper, ({ params, request }) => shown(desk, ofStudy(params), request))
  bind(app, routes.recordPaper, ({ params, request }) => shown(desk, ofRecord(params), request))
  bind(app, routes.labPaper, ({ params, request }) => shown(desk, ofLab(params), request))
  bind(app, routes.keepStudyPaper, ({ params, body, request }) => kept(desk, ofStudy(params), { body, request }))
  bind(app, routes.keepRecordPaper, async ({ params, body, request }) =>
    params.kind === 'mends' ? failed(mendsElsewhere) : kept(desk, ofRecord(params), { body, request }),
  )
  bind(app, routes.keepLabPaper, ({ params, body, request }) => kept(desk, ofLab(params), { body, request }))
}

type StudyPlace = { readonly study: string; readonly kind: 'question' | 'runSheet' | 'decision' | 'notes' }
type RecordPlace = { readonly record: string; readonly kind: 'mends' | 'runSheet' }
type LabPlace = { readonly kind: 'material' | 'liquid' | 'rig' | 'fixture'; readonly name: string }

const ofStudy = ({ study, kind }: StudyPlace): PaperWord => ({ subject: 'study', word: study, kind })
const ofRecord = ({ record, kind }: RecordPlace): PaperWord => ({ subject: 'record', word: record, kind })
const ofLab = (place: LabPlace): PaperWord => ({ subject: 'lab', word: 'lab', ...place })

async function shown({ held }: ServerDesk, at: PaperWord, request: Request): Promise<Outcome<Response>> {
  const id = await paperSubject(held, at)
  if (!id.ok) return id
  const paper = await paperAt(held, at)
  if (!paper.ok) return paper
  if (paper.value === undefined) return done(jsonAnswer(noPaper(at, id.value), 200, { etag: versionTag(0) }))
  const tag = versionTag(paper.value.version)
  if (request.headers.get('if-none-match')?.trim() === tag) {
    return done(new Response(null, { status: 304, headers: { etag: tag } }))
  }
  return done(jsonAnswer(paperIn(paper.value), 200, { etag: tag }))
}

async function kept(
  { held }: ServerDesk,
  at: PaperWord,
  { body, request }: { readonly body: NewPaper; readonly request: Request },
): Promise<Outcome<Response>> {
  const after = versionSeen(request.headers)
  if (!after.ok) return after
  const end = await keepPaper(held, at, { ...body, after: after.value })
  if (!end.ok) return end
  const { paper } = end.value
  if (end.value.end === 'superseded') return done(superseded(at, paper && paperIn(paper)))
  return done(jsonAnswer(paperIn(end.value.paper), 200, { etag: versionTag(end.value.paper.version) }))
}

/** Somebody wrote in between; what stands now comes along. */
const superseded = (at: PaperWord, current: unknown): Response =>
  problemAnswer([supersededProblem(at.kind)], current ?? null)

/** The problem alone. */
export const supersededProblem = (kind: string): Problem => ({
  kind: 'superseded',
  class: 'wrongUse',
  place: { name: kind },
  what: 'Somebody else kept a newer version.',
  mend: 'Look at it, then keep yours after it, or take theirs.',
})

/** Nobody has kept one yet. That is no error: a page asks for it before it has anything to say. */
const noPaper = ({ subject, kind, name = '' }: PaperWord, subjectId: string): Paper => ({
  ...{ subject, subjectId, kind, name, version: 0, supersedes: null, content: null },
  ...{ by: '', why: '', at: '' },
})

const mendsElsewhere: Problem = {
  kind: 'fieldWrong',
  class: 'wrongUse',
  place: { name: 'kind', cell: 'mends' },
  what: 'Moved windows change the result of the record.',
  mend: 'Put them to …/mends, which reduces the record again.',
}
