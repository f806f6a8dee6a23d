import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly title?: string
  readonly creator?: readonly string[]
  readonly licence?: string
  readonly reports?: true
}

export const exportVerb: Verb = {
  name: 'export',
  summary: 'write a lab, a study or a record as a data package',
  description:
    'Writes a lab, or a record, a study or a sample of it, as an open data package: raw bytes, setups, results, tables, ' +
    'pictures and checksums, with all that was said and when. Anybody can read it, and "kufe import" takes it in again.',
  examples: [
    'kufe export drawer-runners drawer-runners.zip --creator "Lacquer workshop" --licence CC-BY-4.0',
    'kufe export drawer-b.csv drawer-b/ --reports',
    'kufe export all whole-lab/',
  ],
  define: (command, run) => {
    const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
    command
      .argument('<id>', 'a record, a study or a sample as "kufe show" takes it; "all" for the whole lab')
      .argument('<out>', 'a folder that is not there yet, or a file that ends in .zip')
    addLabOption(command)
      .option('--title <words>', 'title of the package')
      .option('--creator <name>', 'who answers for the data; may be repeated', several)
      .option('--licence <name>', 'licence under which they may be used, such as CC-BY-4.0')
      .option('--reports', 'put the report of each record in, as HTML and PDF')
      .option('--json', 'answer for machines: what was written, as JSON')
      .action((id: string, out: string, options: Options) => run((desk) => exported(id, { out, ...options }, desk)))
  },
}

async function exported(id: string, options: Options & { readonly out: string }, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { exportLab } = await import('../../bench/lab/package/index.ts')
  const { out, title, creator: creators = [], licence, reports = false } = options
  const args = { word: id === 'all' ? undefined : id, out, title, creators, licence, reports }
  const written = await exportLab(args, call.value, desk.outside)
  if (!written.ok) return complain(written.problems, desk, json)
  const { records, files, bytes } = written.value
  const counts = `${records} ${records === 1 ? 'record' : 'records'} in ${files} files, ${bytes.toLocaleString('en')} bytes`
  desk.screen.out(
    json ? `${JSON.stringify({ schemaVersion, ...written.value }, null, 2)}\n` : `Wrote ${out}: ${counts}.\n`,
  )
  return exitCodes.ok.code
}
