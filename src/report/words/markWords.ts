import type { CheckedItem, RemarkEntry } from '../reportContent.ts'

/** How much a remark weighs, for those who hear it. */
export const weightWords: Readonly<Record<RemarkEntry['weight'], string>> = {
  stops: 'must not be used as it stands',
  caution: 'usable with care',
  note: 'good to know',
}

/** Whether an item is there. */
export const stateWords: Readonly<Record<CheckedItem['state'], string>> = {
  present: 'present',
  partly: 'partly',
  lacking: 'lacking',
}
