import { Option } from 'commander'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

const quantities = {
  friction: 'friction',
  'friction-swing': 'frictionSwing',
  'axial-force': 'axialForce',
  gap: 'gap',
} as const

interface Options extends ReadingOptions {
  readonly quantity: keyof typeof quantities
  readonly columns?: number
  readonly rows?: number
  readonly places?: number
  readonly difference?: true
  readonly changeSvg?: string
}

export const turnMapVerb: Verb = {
  name: 'turn-map',
  summary: 'fold a record by turn and angle, and see where the track changed',
  description:
    'Folds friction, force or gap by turn and by place in the turn, so that what repeats stands upright and what changes ' +
    'runs downwards, and compares late turns with early ones: a place that wears through stands out with a band for all ' +
    'places together.',
  examples: [
    'kufe turn-map drawer-b.csv --setup drawer.yaml --svg turns.svg',
    'kufe turn-map drawer-b.csv --setup drawer.yaml --difference --svg change.svg --change-svg places.svg',
  ],
  define: (command, run) => {
    addReadingOptions(command)
      .optionsGroup('Folding:')
      .addOption(new Option('--quantity <what>', 'what is folded').choices(Object.keys(quantities)).default('friction'))
      .option(
        '--columns <number>',
        'cells around the turn; as the record is long where nothing is said',
        wholeNumber(1, 1440),
      )
      .option('--rows <number>', 'most rows of cells', wholeNumber(1, 1000))
      .option('--places <number>', 'places around the turn that are compared', wholeNumber(8, 360))
      .option('--difference', 'draw the change from the early turns instead of the values')
      .option('--change-svg <file>', 'draw early and late profiles with their difference into this file')
      .action((file: string, options: Options) => run((desk) => turnMap(file, options, desk)))
  },
}

async function turnMap(file: string, options: Options, desk: Desk): Promise<number> {
  const { drawTurnChange, drawTurnMap, turnMapOfFile, turnMapText, writeWhole } = await import(
    '../../bench/turnMap/index.ts'
  )
  const json = options.json === true
  const { columns, rows, places, palette } = options
  const args = { ...reduceArgs(file, options, desk), quantity: quantities[options.quantity], columns, rows, places }
  const found = await turnMapOfFile(args, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  const pictures = [
    [options.svg, () => drawTurnMap(found.value, { palette, difference: options.difference === true })],
    [options.changeSvg, () => drawTurnChange(found.value, palette)],
  ] as const
  for (const [name, draw] of pictures) {
    if (name === undefined) continue
    const written = writeWhole(name, draw())
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { turnMapInWords } = await import('../show/turnMapInWords.ts')
  desk.screen.out(json ? turnMapText(found.value) : turnMapInWords(found.value, desk.screen))
  const spot = found.value.change.remarks.length > 0
  return options.strict === true && spot ? exitCodes.finding.code : exitCodes.ok.code
}
