import type { CheckedSetup } from '../../bench/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions } from '../labOptions.ts'
import { addOwnOption, ownPlaces } from '../ownOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly check?: string
  readonly fill?: string
  readonly own: readonly string[]
  readonly out?: string
  readonly force?: true
}

export const setupVerb: Verb = {
  name: 'setup',
  summary: 'start the file that says what was mounted, or check one',
  description:
    'Writes a setup to start from: a YAML file that tells what the record itself does not, with every key explained. ' +
    'With --check it reads one and names every mistake with its line and its mend. With --fill it writes one with stiffness and ' +
    'viscosity looked up by name, in the built-in table, among your own, and in the lab.',
  examples: [
    'kufe setup balls-on-plate --out drawer.yaml',
    'kufe setup --check drawer.yaml',
    'kufe setup ring-on-plate',
    'kufe setup --fill drawer.yaml --out drawer-filled.yaml',
  ],
  define: (command, run) => {
    command
      .argument(
        '[fixture]',
        'balls-on-plate, ball-on-plates, ball-on-balls, ring-on-plate, disc-on-plate or pins-on-disc',
      )
      .option('--check <file>', 'check this setup instead')
      .option('--fill <file>', 'write this setup with the numbers that the tables know of its bodies and liquid')
      .option('-o, --out <file>', 'write the setup into this file instead of on standard output')
      .option('--force', 'write over a file that is there already')
    addLabOption(addOwnOption(command))
      .option('--json', 'answer for machines: JSON on standard output')
      .action((fixture: string | undefined, options: Options) => run((desk) => setup(fixture, options, desk)))
  },
}

async function setup(fixture: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  if (options.check !== undefined) return check(options.check, json, desk)
  if (options.fill !== undefined) return fill(options.fill, options, desk)
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

async function fill(file: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const { fillSetup, writeNew } = await import('../../bench/index.ts')
  const { ownThings } = await import('../../bench/material/index.ts')
  const places = await ownPlaces(options, desk)
  if (!places.ok) return complain(places.problems, desk, json)
  const own = await ownThings(places.value, desk.outside)
  if (!own.ok) return complain(own.problems, desk, json)
  const filled = await fillSetup(file, own.value)
  if (!filled.ok) return complain(filled.problems, desk, json)
  if (options.out !== undefined) {
    const written = writeNew(options.out, filled.value.text, options.force === true)
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { filledInWords } = await import('../show/setupInWords.ts')
  desk.screen.out(filledInWords(filled.value, options))
  return exitCodes.ok.code
}

const asJson = ({ setup, columns, sha256, geometry }: CheckedSetup): string =>
  `${JSON.stringify({ schemaVersion, sha256, setup, columns, fixture: geometry }, null, 2)}\n`
