import { done, type Outcome } from '../../core/terms/index.ts'
import type { KeptRecord, Lab } from '../../store/index.ts'

/** The name of the file as it came. Records may be renamed later, and their results must not change with that. */
export async function firstName(lab: Lab, record: KeptRecord): Promise<Outcome<string>> {
  if (record.version === 1) return done(record.name)
  const versions = await lab.records.versions(record.id)
  return versions.ok ? done(versions.value[0]?.name ?? record.name) : versions
}
