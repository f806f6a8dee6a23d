import type { PackageContent } from './packageContent.ts'

/** `README.md`: what lies where, for people who have nothing but a text editor and a spreadsheet. */
export const readMe = ({ title, description, created, creators, licence, program }: PackageContent): string => {
  const parts = [
    `# ${oneLine(title)}`,
    ...(description === '' ? [] : [oneLine(description)]),
    `Made ${created} by ${oneLine(program)}${creators.length === 0 ? '' : ` for ${creators.map(oneLine).join(', ')}`}. ${licence === null ? 'No licence is stated: ask before you use the data.' : `Licence: ${oneLine(licence.title ?? licence.name)}.`}`,
    '## What lies where',
    [
      '- `records.csv`: all records in a table. Each has a folder under `records/`:',
      '  - `raw.*`: the bytes of the measurement as they came, never changed;',
      '  - `points.csv`, `points.json`, `points.parquet`: friction at each speed; names in the first row, units (SI) in the second;',
      '  - `*.result.json`: the whole result with its window, remarks, curve and what it was made from;',
      '  - pictures and reports, where there are any.',
      '- `setups/`: rig, fixture, surfaces and run as text (YAML), as their authors wrote them.',
      '- `lab.json`: what people said about studies, samples and records, every version with who, when and why.',
      '- `datapackage.json`: the list of all files with sizes and checksums (Data Package).',
      '- `ro-crate-metadata.json`: the same for repositories of research data (RO-Crate 1.1).',
      '- `checksums.sha256`: checksums of all other files; `sha256sum -c checksums.sha256` holds the files against them.',
    ].join('\n'),
    'A text cell that begins with an apostrophe is guarded: without it a spreadsheet would run the text as a formula. The text itself stands in `lab.json`.',
  ]
  return `${parts.join('\n\n')}\n`
}

/** Words of people in one line, with what Markdown would read as markup taken for what it is. */
const oneLine = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_{}[\]()#+\-!<>|~&$]/g, '\\$&')
