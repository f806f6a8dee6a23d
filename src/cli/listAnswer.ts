import type { HistoryEntry, Listed } from '../bench/lab/index.ts'
import { schemaVersion } from '../core/terms/index.ts'
import { historyInWords, recordsInWords, titledInWords } from './show/listInWords.ts'

const asJson = (document: object): string => `${JSON.stringify({ schemaVersion, ...document }, null, 2)}\n`

/** What a lab holds, for machines or for people. */
export function answerList(what: 'records' | 'studies' | 'samples', listed: Listed, json: boolean): string {
  const { where, title } = listed
  if (what !== 'records') {
    const things = listed[what]
    return json ? asJson({ lab: { where, title }, [what]: things }) : titledInWords(what, things, listed)
  }
  const records = listed.records.map(({ record, result }) => ({ ...record, result: result ?? null }))
  return json ? asJson({ lab: { where, title }, records }) : recordsInWords(listed)
}

/** The history, for machines or for people. */
export const answerHistory = (history: readonly HistoryEntry[], json: boolean): string =>
  json ? asJson({ history }) : historyInWords(history)
