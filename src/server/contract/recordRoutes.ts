import { z } from 'zod'
import { beyondAnswer, turnChangeAnswer } from './beyond.ts'
import { jobMade } from './job.ts'
import { amendRecord, newMends, recordAnswer, stretchesAnswer } from './record.ts'
import { route } from './route.ts'
import { stepAnswer, turnsAnswer, turnsQuery } from './step.ts'
import { recordWord } from './text.ts'
import { traceAnswer, traceQuery } from './trace.ts'

const record = z.object({ record: recordWord })
const step = record.extend({ step: z.coerce.number().int() })

const get = { method: 'get', status: 200 } as const
const job202 = { answer: jobMade, status: 202 } as const

/** Routes of one record. */
export const recordRoutes = {
  record: route({
    ...get,
    path: '/api/records/{record}',
    group: 'Records',
    about: 'a record with its result, setup, versions and papers',
    params: record,
    answer: recordAnswer,
  }),
  trace: route({
    ...get,
    path: '/api/records/{record}/trace',
    group: 'Records',
    about: 'raw channels over time, two values a pixel',
    params: record,
    query: traceQuery,
    answer: traceAnswer,
  }),
  stretches: route({
    ...get,
    path: '/api/records/{record}/stretches',
    group: 'Records',
    about: 'what became of every stretch',
    params: record,
    answer: stretchesAnswer,
  }),
  turns: route({
    ...get,
    path: '/api/records/{record}/turns',
    group: 'Records',
    about: 'the turn map',
    params: record,
    query: turnsQuery,
    answer: turnsAnswer,
  }),
  beyond: route({
    ...get,
    path: '/api/records/{record}/beyond',
    group: 'Records',
    about: 'starts, holds, loops, vibration, wear and the turn, with pictures, and what each would take',
    params: record,
    answer: beyondAnswer,
  }),
  turnChange: route({
    ...get,
    path: '/api/records/{record}/turn-change',
    group: 'Records',
    about: 'late turns against early ones, with pictures',
    params: record,
    query: turnsQuery,
    answer: turnChangeAnswer,
  }),
  step: route({
    ...get,
    path: '/api/records/{record}/steps/{step}',
    group: 'Records',
    about: 'one step: rows, autocorrelation, budget, cut',
    params: step,
    answer: stepAnswer,
  }),
  mends: route({
    method: 'put',
    path: '/api/records/{record}/mends',
    group: 'Records',
    about: 'move windows; the record is reduced again beside the old result',
    params: record,
    body: newMends,
    ...job202,
    versioned: true,
  }),
  amend: route({
    method: 'post',
    path: '/api/records/{record}/amend',
    group: 'Records',
    about: 'correct what is said about a record',
    params: record,
    body: amendRecord,
    ...job202,
  }),
  verify: route({
    method: 'post',
    path: '/api/records/{record}/verify',
    group: 'Records',
    about: 'compute the result again and compare bit for bit',
    params: record,
    ...job202,
  }),
} as const
