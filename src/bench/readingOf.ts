import { done, type Outcome } from '../core/terms/index.ts'
import type { SetupFile } from '../io/setup/index.ts'
import { answersFromText, keepMapping, type NamedMapping, type ReadOptions, readMapping } from '../io/table/index.ts'
import { columnsTogether, readingWith, type SaidReading } from './given.ts'

/** What was said about a record's columns and dialect, in the words of the terminal. */
export interface ReadingArgs {
  /** `HEADING=UNIT` each. */
  readonly units: readonly string[]
  /** `HEADING=CHANNEL` each, or `HEADING=none`. */
  readonly columns: readonly string[]
  readonly separator?: ReadOptions['separator']
  readonly decimalMark?: ReadOptions['decimalMark']
  readonly encoding?: ReadOptions['encoding']
  readonly sheet?: ReadOptions['sheet']
  /** Name of a kept mapping to use. */
  readonly mapping?: string
  /** Name under which to keep what was said. */
  readonly saveMapping?: string
  /** Folder of the kept mappings. */
  readonly mappings: string
}

/** What was said, its texts read and its mapping fetched. Keeps it with the columns of the setup where asked to. */
export async function readingOf(args: ReadingArgs, setup: SetupFile['columns']): Promise<Outcome<SaidReading>> {
  const answers = answersFromText(args)
  if (!answers.ok) return answers
  const { separator, decimalMark, encoding, sheet } = args
  const mapping = args.mapping === undefined ? done(undefined) : await readMapping(args.mappings, args.mapping)
  if (!mapping.ok) return mapping
  const said: SaidReading = { columns: answers.value, separator, decimalMark, encoding, sheet, mapping: mapping.value }
  if (args.saveMapping === undefined) return done(said)
  const kept = await keepMapping(args.mappings, wholeMapping(args.saveMapping, readingWith(said, setup)))
  return kept.ok ? done(said) : kept
}

/** What this call said, on top of the mapping that it used. */
function wholeMapping(name: string, { mapping, ...said }: ReadOptions): NamedMapping {
  return { ...mapping, ...said, name, columns: columnsTogether(mapping?.columns ?? {}, said.columns ?? {}) }
}
