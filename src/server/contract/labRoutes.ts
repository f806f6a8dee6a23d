import { z } from 'zod'
import { replicatesAnswer } from './decision.ts'
import { bodiesAnswer, historyAnswer, historyQuery, labAnswer } from './lab.ts'
import { labPaperPlace, newPaper, paper, recordPaperPlace, studyPaperPlace } from './paper.ts'
import { route } from './route.ts'
import { newStudy, studiesAnswer, studyAnswer, studyBrief } from './study.ts'
import { identifier } from './text.ts'

const study = z.object({ study: identifier })
const events = (about: string) => ({ media: 'text/event-stream', about })

const get = { method: 'get', status: 200 } as const

/** Routes of the lab, its studies and all papers. */
export const labRoutes = {
  lab: route({ ...get, path: '/api/lab', group: 'Lab', about: 'the lab at a glance', answer: labAnswer }),
  history: route({
    ...get,
    path: '/api/lab/history',
    group: 'Lab',
    about: 'who changed what, when and why',
    query: historyQuery,
    answer: historyAnswer,
  }),
  bodies: route({
    ...get,
    path: '/api/lab/bodies',
    group: 'Lab',
    about: 'how often balls and plates were used',
    answer: bodiesAnswer,
  }),
  events: route({
    ...get,
    path: '/api/events',
    group: 'Lab',
    about: 'what is kept, as it happens',
    answer: events('Events named "changed" with a ChangedEvent each; their id is the line of the history.'),
  }),
  studies: route({ ...get, path: '/api/studies', group: 'Studies', about: 'all studies', answer: studiesAnswer }),
  makeStudy: route({
    method: 'post',
    path: '/api/studies',
    group: 'Studies',
    about: 'make a study',
    body: newStudy,
    answer: studyBrief,
    status: 201,
  }),
  study: route({
    ...get,
    path: '/api/studies/{study}',
    group: 'Studies',
    about: 'a study with its samples, records and papers',
    params: study,
    answer: studyAnswer,
  }),
  replicates: route({
    ...get,
    path: '/api/studies/{study}/replicates',
    group: 'Studies',
    about: 'the replicates of a study, as a comparison of its samples takes them',
    params: study,
    answer: replicatesAnswer,
  }),
  studyPaper: route({
    ...get,
    path: '/api/studies/{study}/papers/{kind}',
    group: 'Papers',
    about: 'a paper of a study, latest version',
    params: studyPaperPlace,
    answer: paper,
    versioned: true,
  }),
  keepStudyPaper: route({
    method: 'put',
    path: '/api/studies/{study}/papers/{kind}',
    group: 'Papers',
    about: 'keep a new version',
    params: studyPaperPlace,
    body: newPaper,
    answer: paper,
    status: 200,
    versioned: true,
  }),
  recordPaper: route({
    ...get,
    path: '/api/records/{record}/papers/{kind}',
    group: 'Papers',
    about: 'a paper of a record, latest version',
    params: recordPaperPlace,
    answer: paper,
    versioned: true,
  }),
  keepRecordPaper: route({
    method: 'put',
    path: '/api/records/{record}/papers/{kind}',
    group: 'Papers',
    about: 'keep a new version; moved windows go to …/mends instead',
    params: recordPaperPlace,
    body: newPaper,
    answer: paper,
    status: 200,
    versioned: true,
  }),
  labPaper: route({
    ...get,
    path: '/api/lab/papers/{kind}/{name}',
    group: 'Papers',
    about: 'a material, liquid, rig or fixture of your own',
    params: labPaperPlace,
    answer: paper,
    versioned: true,
  }),
  keepLabPaper: route({
    method: 'put',
    path: '/api/lab/papers/{kind}/{name}',
    group: 'Papers',
    about: 'keep a new version',
    params: labPaperPlace,
    body: newPaper,
    answer: paper,
    status: 200,
    versioned: true,
  }),
} as const
