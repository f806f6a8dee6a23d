import type { Problem } from '../../core/terms/index.ts'
import type { LabDocument } from './labDocument.ts'
import { packageProblem } from './packageProblem.ts'

/** Things that others in the package hang on and that it does not hold, each once. */
export function missingThings({ studies, samples, setups, records, results, papers = [] }: LabDocument): Problem[] {
  const there = {
    study: new Set(studies.map(({ id }) => id)),
    sample: new Set(samples.map(({ id }) => id)),
    setup: new Set<string>(setups.map(({ sha256 }) => sha256)),
    record: new Set<string>(records.map(({ id }) => id)),
  }
  const missing = new Set<string>()
  const need = (kind: keyof typeof there, id: string | null): void => {
    if (id !== null && !there[kind].has(id)) missing.add(`${kind} ${id.slice(0, 80)}`)
  }
  for (const version of records.flatMap(({ versions }) => versions)) {
    need('study', version.study)
    need('sample', version.sample)
    need('setup', version.setup)
  }
  for (const { origin } of results) {
    need('record', origin.raw)
    need('setup', origin.setup)
  }
  for (const { subject, subjectId } of papers) {
    if (subject === 'study' || subject === 'record') need(subject, subjectId)
  }
  return [...missing].map((thing) => packageProblem('thingMissing', { file: 'lab.json' }, thing))
}
