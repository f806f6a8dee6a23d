import type { StudyView } from '../api/study.ts'
import type { StationSign } from './Sign.tsx'
import type { StationName } from './stations.ts'

const version = (study: StudyView, kind: string): number =>
  study.papers.find((paper) => paper.kind === kind)?.version ?? 0

/** The sign of each station, from what the study holds. */
export function stationSigns(study: StudyView): Readonly<Record<StationName, StationSign>> {
  const { records } = study
  const asked = version(study, 'question') > 0
  const ticked = version(study, 'runSheet') > 0
  const decided = version(study, 'decision') > 0
  const remarks = records.some((record) => record.remarks.some(({ count, weight }) => count > 0 && weight !== 'note'))
  const reduced = records.length > 0 && records.every(({ state }) => state === 'reduced')
  return {
    ask: asked ? 'disc' : 'ring',
    plan: asked ? (records.length > 0 || ticked ? 'disc' : 'half') : 'ring',
    'rig-up': records.length > 0 ? 'disc' : ticked ? 'half' : 'ring',
    read: records.length === 0 ? 'ring' : remarks ? 'triangle' : reduced ? 'disc' : 'half',
    decide: decided ? 'disc' : records.length > 1 ? 'half' : 'ring',
    report: reduced ? 'half' : 'ring',
  }
}
