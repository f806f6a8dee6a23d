import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { quantityOption } from '../quantityOption.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options {
  readonly out: string
  readonly name?: string
  readonly seed?: number
  readonly rows?: number
  readonly axialForce?: number
  readonly temperature?: number
  readonly force?: true
  readonly json?: true
}

export const simulateVerb: Verb = {
  name: 'simulate',
  summary: 'make records whose truth is known',
  description:
    'Makes a record with the virtual rig, together with the setup that reduces it and the truth that it was made from. ' +
    'A run with a section "breakaway" makes torque ramps from rest. Everything that it makes is invented and says so.',
  examples: ['kufe simulate lacquer-a.run.yaml --out invented', 'kufe simulate --name trial --seed 7 --out invented'],
  define: (command, run) => {
    command
      .argument(
        '[run]',
        'the virtual run: what slides on what, how, and what disturbs it (YAML); one of our own if left out',
      )
      .option('-o, --out <folder>', 'folder for the record, its setup and its truth', '.')
      .option('--name <name>', 'name of the files, without ending; that of the run if left out')
      .option('--seed <number>', 'seed, instead of that of the run', wholeNumber(0, 2 ** 32 - 1))
      .option('--rows <number>', 'about so many rows, by longer or shorter steps', wholeNumber(1, 1e9))
      .option(
        '--axial-force <force>',
        'axial force instead of that of the run, for a load series',
        quantityOption('force'),
      )
      .option(
        '--temperature <temperature>',
        'temperature instead of that of the run, for a series',
        quantityOption('temperature'),
      )
      .option('--force', 'write over files that are there already')
      .option('--json', 'answer for machines: what was written, as JSON')
      .action((runFile: string | undefined, options: Options) => run((desk) => simulated(runFile, options, desk)))
  },
}

async function simulated(runFile: string | undefined, options: Options, desk: Desk): Promise<number> {
  const { simulate } = await import('../../bench/index.ts')
  const made = simulate({ ...options, runFile, folder: options.out, force: options.force === true }, desk.outside)
  if (!made.ok) return complain(made.problems, desk, options.json === true)
  const { simulationInWords } = await import('../show/simulationInWords.ts')
  const document = `${JSON.stringify({ schemaVersion, ...made.value }, null, 2)}\n`
  desk.screen.out(options.json === true ? document : simulationInWords(made.value))
  return exitCodes.ok.code
}
