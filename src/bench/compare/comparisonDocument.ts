import { schemaVersion } from '../../core/terms/index.ts'
import type { Compared } from './compared.ts'

/** A comparison for machines: SI throughout, null for what is not known. Fields: docs/json.md. */
export const comparisonText = (compared: Compared): string => {
  const { title, records, left, removals, cautions, alarms, comparison, program } = compared
  return `${JSON.stringify({ schemaVersion, title, program, records, left, removals, cautions, alarms, ...comparison }, null, 2)}\n`
}
