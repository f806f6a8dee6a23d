import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { quantityOption } from '../quantityOption.ts'
import { addManyReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly margin: number
}

export const runInVerb: Verb = {
  name: 'run-in',
  summary: 'say whether it is run in, by a rule and not by the eye',
  description:
    'Asks whether another sweep, or more sliding, would change the answer. Sweeps in the same direction are compared one after ' +
    'the other: run in where at every speed the 95 % interval of the last change lies inside the margin. A record that holds one ' +
    'speed is asked over the last third of its distance. Where the data allow neither yes nor no, that is the answer.',
  examples: [
    'kufe run-in sweep-1.csv sweep-2.csv sweep-3.csv --setup drawer.yaml',
    'kufe run-in hold.csv --setup drawer.yaml --margin "2 %"',
  ],
  define: (command, run) => {
    addManyReadingOptions(command)
      .optionsGroup('Run-in:')
      .option(
        '--margin <share>',
        'largest change that does not matter, as a share of friction',
        quantityOption('ratio', 1),
        0.05,
      )
      .action((files: string[], options: Options) => run((desk) => runIn(files, options, desk)))
  },
}

async function runIn(files: readonly string[], options: Options, desk: Desk): Promise<number> {
  const { drawRunIn, runInOfFiles, runInText, writeWhole } = await import('../../bench/questions/index.ts')
  const json = options.json === true
  const { file: _, ...reading } = reduceArgs('', options, desk)
  const found = await runInOfFiles({ ...reading, files, margin: options.margin }, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawRunIn(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { runInInWords } = await import('../show/runInInWords.ts')
  desk.screen.out(json ? runInText(found.value) : runInInWords(found.value, desk.screen))
  return options.strict === true && found.value.verdict !== 'runIn' ? exitCodes.finding.code : exitCodes.ok.code
}
