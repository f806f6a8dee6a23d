import { nearestWord } from '../core/quantity/index.ts'
import { done, failed, type Outcome, type Outside } from '../core/terms/index.ts'
import { type DemoRecord, demoFiles, demoRecords } from './demoRecords.ts'
import { fitRecord } from './fitRecord.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { reduceFile } from './reduceFile.ts'

/** A demo record with its result and where its files lie. */
export interface ReducedDemo {
  readonly demo: DemoRecord
  readonly files: ReturnType<typeof demoFiles>
  readonly reduced: ReducedRecord
}

/** One of each kind: what a first look needs. */
const firstLook = ['lacquer-a-1', 'lacquer-b-1', 'lacquer-a-tilted', 'silicone-spray', 'wax', 'oat-drink-creamy']

/** The demo records of these names, in the order of their story; those for a first look where none is named. */
export function demosNamed(names: readonly string[]): Outcome<readonly DemoRecord[]> {
  const known = demoRecords.map(({ name }) => name)
  const unknown = names.filter((name) => !known.includes(name))
  if (unknown.length > 0) return failed(...unknown.map((name) => unknownDemo(name, known)))
  const wanted = names.length === 0 ? firstLook : names
  return done(demoRecords.filter(({ name }) => wanted.includes(name)))
}

const unknownDemo = (name: string, known: readonly string[]) => ({
  kind: 'demoUnknown',
  class: 'wrongUse' as const,
  place: {},
  what: `There is no demo record "${name}".`,
  mend: `${nearestWord(name, known) === undefined ? 'Choose from' : `Did you mean ${nearestWord(name, known)}? All:`} ${known.join(', ')}.`,
})

/** Reduces and fits one demo record as any other record. */
export async function reduceDemo(demo: DemoRecord, outside: Outside): Promise<Outcome<ReducedDemo>> {
  const files = demoFiles(demo)
  const reading = { units: [], columns: [], mappings: '' }
  const reduced = await reduceFile({ file: files.record, setup: files.setup, reading, options: {} }, outside)
  return reduced.ok ? done({ demo, files, reduced: fitRecord(reduced.value, outside) }) : reduced
}
