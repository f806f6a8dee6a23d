import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly html?: string
  readonly pdf?: string
  readonly notes?: string
  readonly author?: string
  readonly date?: string
}

export const reportVerb: Verb = {
  name: 'report',
  summary: 'write the report of a record, or of each record of a study',
  description:
    'Writes the whole report of a record that a lab keeps, as one HTML file, as an archivable PDF, or both: question, ' +
    'conditions, method as it was really done, curve, budget, remarks, what the report still lacks, and provenance.',
  examples: [
    'kufe report drawer-b.csv --html drawer-b.html --pdf drawer-b.pdf',
    'kufe report drawer-b.csv --pdf drawer-b.pdf --notes notes.yaml --author MK',
    'kufe report drawer-runners --pdf reports/',
  ],
  define: (command, run) => {
    command.argument('<id>', 'a record by its id, the beginning of it or the name of its file; a study or a sample')
    addLabOption(command)
      .option('--html <place>', 'write HTML: into this file, or into this folder for several records')
      .option('--pdf <place>', 'write PDF: into this file, or into this folder for several records')
      .option('--notes <file>', 'question, answer, author and notes, as YAML')
      .option('--author <name>', 'who answers for the report')
      .option('--date <day>', 'day on the report; that of the result if left out')
      .option('--json', 'answer for machines: what was written, as JSON')
      .action((word: string, options: Options) => run((desk) => reported(word, options, desk)))
  },
}

async function reported(word: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { writeReports } = await import('../../bench/lab/report/index.ts')
  const written = await writeReports({ ...options, word }, call.value, desk.outside)
  if (!written.ok) return complain(written.problems, desk, json)
  const { files, notReduced } = written.value
  const left = notReduced.map(({ name, id }) => `No result yet, and so no report: ${name} (${id.slice(0, 12)}).\n`)
  const words = [...files.map((file) => `Wrote ${file}\n`), ...left].join('')
  desk.screen.out(json ? `${JSON.stringify({ schemaVersion, ...written.value }, null, 2)}\n` : words)
  return exitCodes.ok.code
}
