import { z } from 'zod'
import { change, titled } from './change.ts'
import { paperNote } from './paper.ts'
import { by, name } from './text.ts'

/** A study in a list. */
export const studyBrief = titled
  .extend({
    samples: z.number(),
    records: z.number(),
    reduced: z.number(),
    papers: z.array(paperNote),
  })
  .meta({ id: 'StudyBrief' })

export const studiesAnswer = z.object({ studies: z.array(studyBrief) }).meta({ id: 'Studies' })

export const newStudy = z.strictObject({ name: name(200), by }).meta({ id: 'NewStudy' })

const value = z.number().nullable()

/** A point as a small curve shows it. */
const pointBrief = z
  .object({
    step: z.number(),
    slidingSpeed: z.number().describe('m/s'),
    friction: value,
    low: value.describe('95 % interval from the own part alone.'),
    high: value,
    trusted: z.boolean().describe('The curve may use it.'),
    moved: z.boolean().describe('Somebody moved its window.'),
    remarks: z.array(z.string()).describe('Kinds of remark.'),
  })
  .meta({ id: 'PointBrief' })

const remarkCount = z
  .object({
    kind: z.string(),
    words: z.string(),
    weight: z.enum(['stops', 'caution', 'note']),
    count: z.number().describe('Points and record together.'),
  })
  .meta({ id: 'RemarkCount' })

/** A record on the shelf. */
export const recordBrief = z
  .object({
    id: z.string(),
    name: z.string(),
    study: z.string().nullable(),
    sample: z.string().nullable(),
    replicate: z.number().nullable(),
    mountedBy: z.string().nullable(),
    ballSet: z.string().nullable(),
    day: z.string().nullable(),
    size: z.number().describe('Bytes.'),
    version: z.number(),
    change,
    state: z.enum(['reduced', 'notReduced', 'withoutSetup']),
    result: z.string().nullable().describe('Id of the result that counts.'),
    points: z.array(pointBrief),
    line: z
      .array(z.object({ slidingSpeed: z.number(), friction: z.number(), low: z.number(), high: z.number() }))
      .describe('The fitted curve with its 95 % band; empty without one.'),
    remarks: z.array(remarkCount),
    window: z.object({ low: value, high: value }).describe('Speeds that may be believed, m/s.'),
  })
  .meta({ id: 'RecordBrief' })

export const studyAnswer = titled
  .extend({
    samples: z.array(titled),
    records: z.array(recordBrief),
    papers: z.array(paperNote),
  })
  .meta({ id: 'Study' })

export type StudyBrief = z.infer<typeof studyBrief>
export type StudiesAnswer = z.infer<typeof studiesAnswer>
export type RecordBrief = z.infer<typeof recordBrief>
export type StudyAnswer = z.infer<typeof studyAnswer>
