import type { ShelvedRecord, StudyGlance } from '../../bench/serve/index.ts'
import type { Paper, PaperNote, RecordBrief, StudyBrief } from '../contract/index.ts'

/** Things of the lab in the words of the contract. The types of the store reach us through the use cases. */

type KeptTitled = StudyGlance['study']
type KeptPaper = StudyGlance['papers'][number]

export const titledIn = ({ id, title, note, version, change }: KeptTitled) => ({
  ...{ id, name: title, note, version },
  change: { ...change },
})

export const paperIn = ({ change, content, ...paper }: KeptPaper): Paper => ({
  ...noteIn({ ...paper, content, change }),
  content,
})

export const noteIn = ({ subject, subjectId, kind, name, version, supersedes, change }: KeptPaper): PaperNote => ({
  ...{ subject, subjectId, kind, name, version, supersedes },
  ...{ by: change.who, why: change.why, at: change.at },
})

export const studyBriefIn = ({ study, samples, records, reduced, papers }: StudyGlance): StudyBrief => ({
  ...titledIn(study),
  ...{ samples, records, reduced },
  papers: papers.map(noteIn),
})

export function recordBriefIn({ record, result, shelved }: ShelvedRecord): RecordBrief {
  const { id, name, study, sample, replicate, mountedBy, ballSet, day, size, version, change, setup } = record
  return {
    ...{ id, name, study, sample, replicate, mountedBy, ballSet, day, size, version },
    change: { ...change },
    state: result !== undefined ? 'reduced' : setup === null ? 'withoutSetup' : 'notReduced',
    result: result?.id ?? null,
    points: shelved?.points.map((point) => ({ ...point })) ?? [],
    line: shelved?.line.map((at) => ({ ...at })) ?? [],
    remarks: shelved?.remarks.map((remark) => ({ ...remark })) ?? [],
    window: shelved?.window ?? { low: null, high: null },
  }
}
