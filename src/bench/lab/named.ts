import { nearestWord } from '../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import type { KeptRecord, Lab, Titled } from '../../store/index.ts'

/** What a person may name in a lab. */
export type Named =
  | { readonly kind: 'record'; readonly record: KeptRecord }
  | { readonly kind: 'study'; readonly study: Titled }
  | { readonly kind: 'sample'; readonly sample: Titled }

/** Finds a record by its id, a beginning of it or its name, else a study, else a sample by its id. */
export async function named(lab: Lab, word: string): Promise<Outcome<Named>> {
  const byId = await lab.records.get(word)
  if (byId.ok) return done({ kind: 'record', record: byId.value })
  if (byId.problems[0]?.kind !== 'notThere') return byId
  const records = await lab.records.list()
  if (!records.ok) return records
  const called = records.value.filter(({ name }) => name === word)
  if (called.length > 1) return failed(notOne(word, called))
  if (called.length === 1) return done({ kind: 'record', record: called[0] })
  const study = await lab.studies.get(word)
  if (study.ok) return done({ kind: 'study', study: study.value })
  const sample = await lab.samples.get(word)
  if (sample.ok) return done({ kind: 'sample', sample: sample.value })
  const studies = await lab.studies.list()
  if (!studies.ok) return studies
  return failed(
    nothing(word, [...studies.value.map(({ id }) => id), ...new Set(records.value.map(({ name }) => name))]),
  )
}

/** The record that a person names. */
export async function namedRecord(lab: Lab, word: string): Promise<Outcome<KeptRecord>> {
  const found = await named(lab, word)
  if (!found.ok) return found
  if (found.value.kind === 'record') return done(found.value.record)
  return failed({
    kind: 'recordWanted',
    class: 'wrongUse',
    place: { name: 'id', cell: word },
    what: `"${word}" is a ${found.value.kind}, and this is about one record.`,
    mend: 'Name a record by its id or by the name of its file; "kufe list" shows both.',
  })
}

/** The records that a word stands for: one, or those of a study or sample; all of the lab without a word. */
export async function namedRecords(lab: Lab, word: string | undefined): Promise<Outcome<readonly KeptRecord[]>> {
  if (word === undefined) return lab.records.list()
  const found = await named(lab, word)
  if (!found.ok) return found
  if (found.value.kind === 'record') return done([found.value.record])
  return lab.records.list({ [found.value.kind]: word })
}

const notOne = (word: string, records: readonly KeptRecord[]): Problem => ({
  kind: 'notUnique',
  class: 'wrongUse',
  place: { name: 'name', cell: word },
  what: `${records.length} records are called "${word}".`,
  mend: `Name one by its id: ${records
    .slice(0, 6)
    .map(({ id }) => id.slice(0, 12))
    .join(', ')}.`,
})

function nothing(word: string, known: readonly string[]): Problem {
  const nearest = nearestWord(word, known)
  return {
    kind: 'nothingNamed',
    class: 'wrongUse',
    place: { name: 'id', cell: word },
    what: `This lab has no record, study or sample "${word}".`,
    mend: nearest === undefined ? 'See what there is with "kufe list".' : `Did you mean ${nearest}?`,
  }
}
