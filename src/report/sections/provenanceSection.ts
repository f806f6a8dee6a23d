import type { Fact } from '../reportContent.ts'
import type { SectionOf } from './sectionOf.ts'

/** What the result was made from, and how to make it again. */
export const provenanceSection: SectionOf = ({ origin, record, texts }) => {
  const facts: Fact[] = [
    { term: 'Record', value: record.file },
    { term: 'SHA-256 of its bytes', value: origin.raw, code: true },
    { term: 'SHA-256 of the setup', value: origin.setup, code: true },
    ...(texts.result === undefined
      ? []
      : [{ term: 'SHA-256 of the result', value: texts.result, code: true as const }]),
    { term: 'Program', value: origin.program },
    { term: 'Seed', value: String(origin.seed) },
    { term: 'Options', value: optionsInWords(origin.options), code: true },
    { term: 'To recompute', value: texts.recompute ?? `kufe verify ${origin.raw.slice(0, 12)}`, code: true },
  ]
  const text =
    'Equal bytes, setup, options, program version and seed give the same result bit for bit. The command below recomputes it from the raw bytes and says what differs, if anything does.'
  return {
    heading: 'Provenance',
    blocks: [
      { kind: 'paragraph', text },
      { kind: 'facts', facts },
    ],
  }
}

/** Plain options in one line; what is itself an object, as the columns are, stands in the result. */
const optionsInWords = (options: Readonly<Record<string, unknown>>): string =>
  Object.entries(options)
    .filter(([, value]) => ['string', 'number', 'boolean'].includes(typeof value))
    .map(([name, value]) => `${name} ${String(value)}`)
    .join('; ')
