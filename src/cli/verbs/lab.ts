import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, type LabOptions, nobody, whoIs } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly title?: string
}

export const labVerb: Verb = {
  name: 'lab',
  summary: 'make a lab: a folder or a database that remembers',
  description:
    'Makes a lab, in which records, setups and results are kept with their history: a folder of its own, or an empty ' +
    'PostgreSQL database. What was kept is never changed; a correction is a new version beside it.',
  examples: [
    'kufe lab new kufe-lab --by MK',
    'kufe lab new postgres://db.example/lacquer --title "Lacquer workshop" --by MK',
  ],
  define: (command, run) => {
    addChangeOptions(
      command
        .addArgument(command.createArgument('<what>', 'what to do').choices(['new']))
        .argument('<place>', 'a folder that is empty or not there yet, or the address of an empty database')
        .option('--title <words>', 'what people call it; the name of its place if left out'),
    )
      .option('--json', 'answer for machines: JSON on standard output')
      .action((_what: 'new', place: string, options: Options) => run((desk) => made(place, options, desk)))
  },
}

async function made(place: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const who = whoIs(desk, options.by)
  if (who === undefined) return complain([nobody], desk, json)
  const { makeLab } = await import('../../bench/lab/index.ts')
  const lab = await makeLab({ place, who, why: options.why ?? '' }, options.title, desk.outside)
  if (!lab.ok) return complain(lab.problems, desk, json)
  const document = `${JSON.stringify({ schemaVersion, ...lab.value }, null, 2)}\n`
  const words = `Made the lab "${lab.value.title}" in ${lab.value.where}.\nNext: kufe add FILE --lab ${place} --setup SETUP.yaml\n`
  desk.screen.out(json ? document : words)
  return exitCodes.ok.code
}
