import type { CheckedItem } from '../reportContent.ts'
import { listed } from '../words/printed.ts'
import type { NoteKey } from './reportNotes.ts'

/** What was found for one item, before the notes of people are looked at. */
export interface Found {
  readonly state: CheckedItem['state']
  /** What is there; empty where nothing is. */
  readonly has: string
  /** What is still missing and where to fill it in, as sentences; empty where nothing is. */
  readonly wants: string
}

/** Nothing is missing. */
export const present = (has: string): Found => ({ state: 'present', has, wants: '' })

/** Some of it is there. */
export const partly = (has: string, wants: string): Found => ({ state: 'partly', has, wants })

/** Nothing is there. */
export const lacking = (wants: string): Found => ({ state: 'lacking', has: '', wants })

/** Where people write what no setup holds. */
export const sayInNote = (what: string, key: NoteKey): string => `Say ${what} in the note “${key}” of the report.`

/** Keys of the setup file, as they stand in it. */
export const writeInSetup = (...keys: readonly string[]): string => `Write ${listed(keys)} into the setup.`
