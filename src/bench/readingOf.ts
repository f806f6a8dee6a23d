import { done, type Outcome } from '../core/terms/index.ts'
import {
  answersFromText,
  type ColumnAnswers,
  keepMapping,
  type NamedMapping,
  type ReadOptions,
  readMapping,
  type SetupFile,
} from '../io/index.ts'

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

/** How to read the record: this call's answers before the setup's, and both before a kept mapping. Keeps them where asked to. */
export async function readingOf(args: ReadingArgs, setup: SetupFile['columns']): Promise<Outcome<ReadOptions>> {
  const answers = answersFromText(args)
  if (!answers.ok) return answers
  const { separator, decimalMark, encoding, sheet } = args
  const columns = together(fromSetup(setup), answers.value)
  const mapping = args.mapping === undefined ? done(undefined) : await readMapping(args.mappings, args.mapping)
  if (!mapping.ok) return mapping
  const reading: ReadOptions = { columns, separator, decimalMark, encoding, sheet, mapping: mapping.value }
  if (args.saveMapping === undefined) return done(reading)
  const kept = await keepMapping(args.mappings, wholeMapping(args.saveMapping, reading))
  return kept.ok ? done(reading) : kept
}

/** The setup says `ignore` where the reader leaves a column aside. */
const fromSetup = (columns: SetupFile['columns']): ColumnAnswers =>
  Object.fromEntries(
    Object.entries(columns).map(([heading, { channel, unit }]) => [
      heading,
      {
        ...(channel === undefined ? {} : { channel: channel === 'ignore' ? null : channel }),
        ...(unit === undefined ? {} : { unit }),
      },
    ]),
  )

function together(first: ColumnAnswers, second: ColumnAnswers): ColumnAnswers {
  const headings = new Set([...Object.keys(first), ...Object.keys(second)])
  return Object.fromEntries([...headings].map((heading) => [heading, { ...first[heading], ...second[heading] }]))
}

/** What this call said, on top of the mapping that it used. */
function wholeMapping(name: string, { mapping, ...said }: ReadOptions): NamedMapping {
  return { ...mapping, ...said, name, columns: together(mapping?.columns ?? {}, said.columns ?? {}) }
}
