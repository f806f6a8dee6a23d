import { z } from 'zod'
import { job, jobMade, jobWord } from './job.ts'
import { route } from './route.ts'
import { questionDocument, questionRead, setupChecked, setupsAnswer, setupText } from './setup.ts'
import { identifier, recordWord } from './text.ts'
import { keepUpload, lookAgain, uploadLook, uploadMade, uploadQuery, uploadWord } from './upload.ts'

const study = z.object({ study: identifier })
const record = z.object({ record: recordWord })
const events = (about: string) => ({ media: 'text/event-stream', about })

const get = { method: 'get', status: 200 } as const
const job202 = { answer: jobMade, status: 202 } as const

/** Routes of what comes in, what goes out, and what takes a while. */
export const doingRoutes = {
  upload: route({
    method: 'post',
    path: '/api/uploads',
    group: 'Uploads',
    about: 'hand in a file: its bytes are the body',
    query: uploadQuery,
    answer: uploadMade,
    status: 201,
  }),
  look: route({
    ...get,
    path: '/api/uploads/{upload}',
    group: 'Uploads',
    about: 'what the columns were taken for, with the first rows',
    params: uploadWord,
    answer: uploadLook,
  }),
  lookAgain: route({
    method: 'post',
    path: '/api/uploads/{upload}/look',
    group: 'Uploads',
    about: 'the same with mended columns',
    params: uploadWord,
    body: lookAgain,
    answer: uploadLook,
    status: 200,
  }),
  keep: route({
    method: 'post',
    path: '/api/uploads/{upload}/keep',
    group: 'Uploads',
    about: 'keep it as a record, reduce and fit it',
    params: uploadWord,
    body: keepUpload,
    ...job202,
  }),
  dropUpload: route({
    method: 'delete',
    path: '/api/uploads/{upload}',
    group: 'Uploads',
    about: 'throw it away',
    params: uploadWord,
    answer: z.null(),
    status: 204,
  }),
  job: route({ ...get, path: '/api/jobs/{job}', group: 'Jobs', about: 'how far it is', params: jobWord, answer: job }),
  jobEvents: route({
    ...get,
    path: '/api/jobs/{job}/events',
    group: 'Jobs',
    about: 'how far it is, as it happens',
    params: jobWord,
    answer: events(
      'Events "progress" (JobProgress), then one of "done" (JobDone), "failed" (ProblemDetails), "stopped".',
    ),
  }),
  stopJob: route({
    method: 'delete',
    path: '/api/jobs/{job}',
    group: 'Jobs',
    about: 'stop it',
    params: jobWord,
    answer: z.null(),
    status: 204,
  }),
  setups: route({
    ...get,
    path: '/api/setups',
    group: 'Setups',
    about: 'setups that the lab has',
    answer: setupsAnswer,
  }),
  checkSetup: route({
    method: 'post',
    path: '/api/setups/check',
    group: 'Setups',
    about: 'read a setup; problems come with their lines',
    body: setupText,
    answer: setupChecked,
    status: 200,
  }),
  setupFromQuestion: route({
    method: 'post',
    path: '/api/setups/fromQuestion',
    group: 'Setups',
    about: "a setup to start from, out of a study's question",
    body: questionDocument,
    answer: setupChecked,
    status: 200,
  }),
  readQuestion: route({
    method: 'post',
    path: '/api/questions/read',
    group: 'Setups',
    about: 'read a question document into SI',
    body: questionDocument,
    answer: questionRead,
    status: 200,
  }),
  reportHtml: route({
    ...get,
    path: '/api/records/{record}/report.html',
    group: 'Reports',
    about: 'the report of a record',
    params: record,
    answer: { media: 'text/html', about: 'One page with its pictures inside.' },
  }),
  reportPdf: route({
    ...get,
    path: '/api/records/{record}/report.pdf',
    group: 'Reports',
    about: 'the same as PDF',
    params: record,
    answer: { media: 'application/pdf', about: 'PDF/A-3b.' },
  }),
  decisionHtml: route({
    ...get,
    path: '/api/studies/{study}/decision.html',
    group: 'Reports',
    about: 'the report of a decision between the samples of a study',
    params: study,
    answer: { media: 'text/html', about: 'One page with its pictures inside.' },
  }),
  decisionPdf: route({
    ...get,
    path: '/api/studies/{study}/decision.pdf',
    group: 'Reports',
    about: 'the same as PDF',
    params: study,
    answer: { media: 'application/pdf', about: 'PDF/A-3b.' },
  }),
  package: route({
    ...get,
    path: '/api/studies/{study}/package.zip',
    group: 'Reports',
    about: 'a study as an open data package',
    params: study,
    answer: { media: 'application/zip', about: 'Raw bytes, setups, results, tables, pictures, checksums.' },
  }),
} as const
