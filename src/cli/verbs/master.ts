import { type Command, InvalidArgumentError, Option } from 'commander'
import { parseQuantity } from '../../core/quantity/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import {
  addReduceOptions,
  addTableOptions,
  type ReadingOptions,
  readingArgs,
  reduceOptions,
} from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

const axes = {
  'viscosity-speed': 'viscositySpeed',
  'per-load': 'perLoad',
  'per-pressure': 'perPressure',
  'per-pressure-and-width': 'perPressureAndWidth',
} as const

interface Options extends ReadingOptions {
  readonly axis: keyof typeof axes
  readonly shearGap?: number
}

export const masterVerb: Verb = {
  name: 'master',
  summary: 'bring several liquids on one pair onto one curve by their viscosity',
  description:
    'Puts records of several liquids on one pair over a Hersey number and tells whether viscosity makes them one curve: the ' +
    'shift of each liquid that is left beyond its viscosity with its interval, and how far the points lie from the common ' +
    'curve against a null. Each record has its own setup beside it, or one is named for all.',
  examples: [
    'kufe master water.csv glycerol-30.csv glycerol-60.csv --svg master.svg',
    'kufe master oat-*.csv --axis per-load --shear-gap "1 µm" --json',
  ],
  define: (command, run) => {
    command
      .argument('<files...>', 'the records, one for each liquid')
      .option('-s, --setup <file>', 'one setup for all; else the one beside each record, oat.setup.yaml for oat.csv')
      .addOption(
        new Option('--axis <definition>', 'which Hersey number: ηv, ηv/W, ηv/p or ηv/(pL)')
          .choices(Object.keys(axes))
          .default('viscosity-speed'),
      )
      .option('--shear-gap <length>', 'gap that shears a thinning liquid: rate is speed over it', lengthOf)
    addAnswer(addReduceOptions(addTableOptions(command))).action((files: readonly string[], options: Options) =>
      run((desk) => master(files, options, desk)),
    )
  },
}

const addAnswer = (command: Command): Command =>
  command
    .optionsGroup('Answer:')
    .option('--json', 'answer for machines: JSON in SI units on standard output')
    .option('--svg <file>', 'draw the master curve into this file')
    .addOption(
      new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
    )
    .option('--strict', 'answer 1 where viscosity does not make the liquids one curve')

function lengthOf(text: string): number {
  const read = parseQuantity(text, 'length')
  if (read.ok && read.value > 0) return read.value
  throw new InvalidArgumentError(read.ok ? 'Write a length above zero.' : `${read.what} ${read.mend}`)
}

async function master(files: readonly string[], options: Options, desk: Desk): Promise<number> {
  const { drawMaster, masterOfFiles, masterText, writeWhole } = await import('../../bench/master/index.ts')
  const json = options.json === true
  const args = {
    files,
    setup: options.setup,
    reading: readingArgs(options, desk),
    options: reduceOptions(options),
    axis: axes[options.axis],
    shearGap: options.shearGap,
  }
  const found = await masterOfFiles(args, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawMaster(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { masterInWords } = await import('../show/masterInWords.ts')
  desk.screen.out(json ? masterText(found.value) : masterInWords(found.value, desk.screen))
  return options.strict === true && found.value.fit.collapses === 'no' ? exitCodes.finding.code : exitCodes.ok.code
}
