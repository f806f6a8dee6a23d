import { done, type Outcome } from '../../core/terms/index.ts'
import type { HistoryEntry, Lab } from '../../store/index.ts'
import type { LabPulse } from './labPulse.ts'

/** Something that is kept has changed, with the study and the record that it belongs to. */
export interface News {
  readonly number: number
  readonly kind: string
  readonly id: string
  readonly study: string | null
  readonly record: string | null
  readonly version: number | null
  readonly by: string
}

/** What is new in the history since the last look of this reader. */
export async function newsSince(lab: Lab, pulse: LabPulse): Promise<Outcome<readonly News[]>> {
  const entries = await pulse.beat()
  if (!entries.ok) return entries
  const news: News[] = []
  for (const entry of entries.value) {
    const { change, kind, id, version } = entry
    const record = await recordOf(lab, entry)
    const study = await studyOf(lab, entry, record)
    news.push({ number: change.number, kind, id, version, by: change.who, study, record })
  }
  return done(news)
}

async function recordOf(lab: Lab, { kind, id }: HistoryEntry): Promise<string | null> {
  if (kind === 'record') return id
  if (kind === 'paper') return /^record\/([0-9a-f]{64})\//.exec(id)?.[1] ?? null
  if (kind !== 'result') return null
  const result = await lab.results.get(id)
  return result.ok ? result.value.origin.raw : null
}

async function studyOf(lab: Lab, { kind, id }: HistoryEntry, record: string | null): Promise<string | null> {
  if (kind === 'study') return id
  if (kind === 'paper' && record === null) return /^study\/([^/]+)\//.exec(id)?.[1] ?? null
  if (record === null) return null
  const kept = await lab.records.get(record)
  return kept.ok ? kept.value.study : null
}
