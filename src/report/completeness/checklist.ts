import type { CheckedItem } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import { findRheometer } from './findRheometer.ts'
import { findTest } from './findTest.ts'
import { findTribosystem } from './findTribosystem.ts'
import type { Found } from './found.ts'
import { itemWords } from './itemWords.ts'
import { type NoteKey, noteKeys } from './reportNotes.ts'

const finders: Readonly<Record<NoteKey, (input: ReportInput) => Found>> = {
  ...findTribosystem,
  ...findTest,
  ...findRheometer,
}

/**
 * The items of a complete friction report, each present or lacking, with where to fill it in. A note of people
 * completes an item whose setup is there, and stands alone for one that only people can know.
 */
export const checklist = (input: ReportInput): readonly CheckedItem[] =>
  noteKeys.map((key) => checked(itemWords[key], finders[key](input), input.texts.notes?.[key]))

function checked(item: string, { state, has, wants }: Found, said: string | undefined): CheckedItem {
  const note = said?.trim() ?? ''
  if (note !== '') return { item, state: 'present', text: [has, note].filter((text) => text !== '').join(' ') }
  return { item, state, text: [has, wants].filter((text) => text !== '').join(' ') }
}
