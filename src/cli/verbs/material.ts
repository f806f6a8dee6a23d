import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions } from '../labOptions.ts'
import { addOwnOption, ownPlaces } from '../ownOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly own: readonly string[]
  readonly temperature?: string
  readonly keep?: string
  readonly starter?: string
  readonly out?: string
  readonly force?: true
}

export const materialVerb: Verb = {
  name: 'material',
  summary: 'look up bodies and liquids, and keep your own',
  description:
    'Lists the table of bodies and liquids, or shows one with its values, their spans and where they come from. Your own come ' +
    'from small YAML files, a liquid also from a measured flow curve, to which a shear-thinning law is fitted. Kept in a lab, ' +
    'they are there for every question; a setup takes them over with "kufe setup --fill".',
  examples: [
    'kufe material',
    'kufe material "glycerol 60 %" --temperature "35 °C"',
    'kufe material --starter flow-curve --out oat-drink.yaml',
    'kufe material --keep oat-drink.yaml --lab kufe-lab --by MK',
  ],
  define: (command, run) => {
    command
      .argument('[name]', 'a body or a liquid, in English, German or by its designation; all of them if left out')
      .option('-t, --temperature <quantity>', 'temperature at which a liquid is shown, such as "35 °C"')
      .optionsGroup('Your own:')
    addOwnOption(command)
      .option('--keep <file>', 'keep the body or liquid of this file in the lab')
      .option('--starter <kind>', 'begin such a file: body, liquid or flow-curve')
      .option('-o, --out <file>', 'write the starter into this file instead of on standard output')
      .option('--force', 'write over a file that is there already')
      .optionsGroup('Lab:')
    addChangeOptions(addLabOption(command))
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((name: string | undefined, options: Options) => run((desk) => material(name, options, desk)))
  },
}

async function material(name: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  if (options.starter !== undefined) return starter(options.starter, options, desk)
  if (options.keep !== undefined) return keep(options.keep, options, desk)
  const { foundThing, materialTable, ownThings, wantedTemperature } = await import('../../bench/material/index.ts')
  const temperature = wantedTemperature(options.temperature)
  if (!temperature.ok) return complain(temperature.problems, desk, json)
  const places = await ownPlaces(options, desk)
  if (!places.ok) return complain(places.problems, desk, json)
  const own = await ownThings(places.value, desk.outside)
  if (!own.ok) return complain(own.problems, desk, json)
  const show = await import('../show/materialInWords.ts')
  if (name === undefined) {
    const table = materialTable(own.value)
    if (!table.ok) return complain(table.problems, desk, json)
    desk.screen.out(json ? show.asJson(table.value) : show.materialTableInWords(table.value, desk.screen))
    return exitCodes.ok.code
  }
  const found = foundThing(name, own.value, temperature.value)
  if (!found.ok) return complain(found.problems, desk, json)
  desk.screen.out(json ? show.asJson(found.value) : show.materialInWords(found.value, desk.screen))
  return exitCodes.ok.code
}

async function keep(file: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { keepOwnThing } = await import('../../bench/material/index.ts')
  const kept = await keepOwnThing(file, call.value, desk.outside)
  if (!kept.ok) return complain(kept.problems, desk, json)
  const show = await import('../show/materialInWords.ts')
  desk.screen.out(json ? show.asJson(kept.value) : show.keptThingInWords(kept.value, desk.screen))
  return exitCodes.ok.code
}

async function starter(kind: string, options: Options, desk: Desk): Promise<number> {
  const { starterThing, writeNew } = await import('../../bench/index.ts')
  const { starterWritten } = await import('../show/starterWritten.ts')
  const text = starterThing(kind, options.out ?? '')
  if (!text.ok) return complain(text.problems, desk, options.json === true)
  if (options.out !== undefined) {
    const written = writeNew(options.out, text.value, options.force === true)
    if (!written.ok) return complain(written.problems, desk, options.json === true)
  }
  desk.screen.out(starterWritten(text.value, options, (file) => `kufe material --keep ${file}`))
  return exitCodes.ok.code
}
