import type { ReducedRecord } from '../bench/index.ts'
import { remarkWords } from '../core/terms/index.ts'

/** What `--strict` answers 1 for, one sentence each: no believable speed, values that must not be used, no curve. */
export function findings({ reduction, curve, remarks }: ReducedRecord): readonly string[] {
  const found: string[] = []
  if (reduction.window.low === null) found.push('No speed of this record can be believed.')
  // A trusted point has a value that may be used, whatever was found in the rows that were cut.
  const distrusted = reduction.points.filter(({ trusted }) => !trusted)
  const all = [...distrusted.flatMap((point) => point.remarks), ...remarks]
  const stopping = [...new Set(all.map(({ kind }) => kind))].filter((kind) => remarkWords[kind].weight === 'stops')
  for (const kind of stopping) found.push(`Found: ${remarkWords[kind].words}.`)
  if (curve !== null && curve.model === null) found.push('No curve could be fitted.')
  return found
}
