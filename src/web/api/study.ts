import type { StudyBrief as InList, LabAnswer, StudyAnswer } from '../../server/contract/index.ts'

/** A study with all that a rail, a shelf and a sign need; the contract's word for it. */
export type StudyView = StudyAnswer
/** A study in the lab's list. */
export type StudyBrief = InList
/** The lab at a glance. */
export type LabView = LabAnswer
