import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly scar?: readonly string[]
  readonly scarUncertainty?: string
  readonly section?: readonly string[]
  readonly profile?: readonly string[]
  readonly profileUnits?: string
  readonly trackWidth?: string
}

export const wearVerb: Verb = {
  name: 'wear',
  summary: 'see what was worn, how fast, and whether it moved the pressure during the sweep',
  description:
    'From scars, profiles and the gap to worn volumes and specific wear rates with 95 % intervals, the pressure over the ' +
    'test, and the answer whether wear moved the pressure and the regimes while the curve was drawn. Scars and profiles ' +
    'stand under "worn:" in the setup; what is typed here goes before them.',
  examples: [
    'kufe wear drawer-b.csv --setup drawer.yaml --scar "0.42 x 0.40 mm" --scar 0.44mm --scar 0.51mm',
    'kufe wear drawer-b.csv --setup drawer.yaml --profile track-1.csv --profile track-2.csv --svg wear.svg',
  ],
  define: (command, run) => {
    const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
    addReadingOptions(command)
      .optionsGroup('What was found worn:')
      .option('--scar <diameter>', 'diameter of a worn flat, or two with x between; may be repeated', several)
      .option('--scar-uncertainty <length>', 'standard uncertainty of one reading; 5 µm where nobody says')
      .option('--section <area>', 'area of a profile across the track, such as "120 µm²"; may be repeated', several)
      .option('--profile <file>', 'profile across the track: position and height; may be repeated', several)
      .option('--profile-units <x, z>', 'units of a profile that names none, such as "mm, µm"')
      .option('--track-width <length>', 'width of the track, where there is no profile')
      .action((file: string, options: Options) => run((desk) => wear(file, options, desk)))
  },
}

async function wear(file: string, options: Options, desk: Desk): Promise<number> {
  const { drawWear, wearOfFile, wearText, writeWhole } = await import('../../bench/wear/index.ts')
  const json = options.json === true
  const typed = {
    scars: options.scar,
    scarUncertainty: options.scarUncertainty,
    sections: options.section,
    profiles: options.profile,
    profileUnits: options.profileUnits,
    trackWidth: options.trackWidth,
  }
  const found = await wearOfFile({ ...reduceArgs(file, options, desk), typed }, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawWear(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { wearInWords } = await import('../show/wearInWords.ts')
  desk.screen.out(json ? wearText(found.value) : wearInWords(found.value, desk.screen))
  const moved = found.value.wear.moved.verdict === 'yes'
  return options.strict === true && moved ? exitCodes.finding.code : exitCodes.ok.code
}
