import type { CheckedSetup } from '../../bench/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly check?: string
  readonly out?: string
  readonly force?: true
  readonly json?: true
}

export const setupVerb: Verb = {
  name: 'setup',
  summary: 'start the file that says what was mounted, or check one',
  description:
    'Writes a setup to start from: a YAML file that tells what the record itself does not, with every key explained. ' +
    'With --check it reads one and names every mistake with its line and its mend.',
  examples: [
    'kufe setup balls-on-plate --out drawer.yaml',
    'kufe setup --check drawer.yaml',
    'kufe setup ring-on-plate',
  ],
  define: (command, run) => {
    command
      .argument(
        '[fixture]',
        'balls-on-plate, ball-on-plates, ball-on-balls, ring-on-plate, disc-on-plate or pins-on-disc',
      )
      .option('--check <file>', 'check this setup instead')
      .option('-o, --out <file>', 'write the setup into this file instead of on standard output')
      .option('--force', 'write over a file that is there already')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((fixture: string | undefined, options: Options) => run((desk) => setup(fixture, options, desk)))
  },
}

async function setup(fixture: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  if (options.check !== undefined) return check(options.check, json, desk)
  const { starterSetup, writeNew } = await import('../../bench/index.ts')
  const { setupWritten } = await import('../show/setupInWords.ts')
  const starter = starterSetup(fixture ?? '', options.out ?? '')
  if (!starter.ok) return complain(starter.problems, desk, json)
  if (options.out !== undefined) {
    const written = writeNew(options.out, starter.value, options.force === true)
    if (!written.ok) return complain(written.problems, desk, json)
  }
  desk.screen.out(setupWritten(starter.value, options))
  return exitCodes.ok.code
}

async function check(file: string, json: boolean, desk: Desk): Promise<number> {
  const { checkSetup } = await import('../../bench/index.ts')
  const { setupInWords } = await import('../show/setupInWords.ts')
  const checked = await checkSetup(file)
  if (!checked.ok) return complain(checked.problems, desk, json)
  desk.screen.out(json ? asJson(checked.value) : setupInWords(file, checked.value))
  return exitCodes.ok.code
}

const asJson = ({ setup, columns, sha256, geometry }: CheckedSetup): string =>
  `${JSON.stringify({ schemaVersion, sha256, setup, columns, fixture: geometry }, null, 2)}\n`
