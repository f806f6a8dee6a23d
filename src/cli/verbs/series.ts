import { Option } from 'commander'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addManyReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

/** Axes as people say them, and as the bench does. */
const axes = { speed: 'speed', film: 'film', 'film-per-load': 'filmPerLoad' } as const

interface Options extends ReadingOptions {
  readonly against: 'load' | 'temperature'
  readonly axis: keyof typeof axes
  readonly multiples?: string
  readonly map?: string
}

export const seriesVerb: Verb = {
  name: 'series',
  summary: 'take records at several loads or temperatures together',
  description:
    'Reduces records that differ in load or in temperature and fits the law of friction along them: the exponent a of F^(−a), or ' +
    'the energy E of exp(E/RT), at each speed and over all, with 95 % intervals in which what a mounting does to all its speeds ' +
    'counts once. Draws all records on an axis of a film law, one by one, and as a map over speed and load that shows where data are.',
  examples: [
    'kufe series load-1.csv load-2.csv load-5.csv load-10.csv',
    'kufe series warm-*.csv --against temperature --axis film --svg series.svg',
    'kufe series load-*.csv --setup drawer.yaml --map map.svg --multiples each.svg --json',
  ],
  define: (command, run) => {
    addManyReadingOptions(command)
      .optionsGroup('Series:')
      .addOption(
        new Option('--against <what>', 'what differs from record to record')
          .choices(['load', 'temperature'])
          .default('load'),
      )
      .addOption(
        new Option('--axis <name>', 'axis of the pictures: v, ηv, or ηv over the load on one contact')
          .choices(Object.keys(axes))
          .default('speed'),
      )
      .option('--multiples <file>', 'draw every record in a small plot of its own into this file')
      .option('--map <file>', 'draw the map over speed and load into this file')
      .action((files: string[], options: Options) => run((desk) => series(files, options, desk)))
  },
}

async function series(files: readonly string[], options: Options, desk: Desk): Promise<number> {
  const bench = await import('../../bench/questions/index.ts')
  const json = options.json === true
  const { file: _, ...reading } = reduceArgs('', options, desk)
  const args = { ...reading, files, against: options.against, filmAxis: axes[options.axis] }
  const found = await bench.seriesOfFiles(args, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  const wanted = [
    [options.svg, () => bench.drawSeries(found.value, options.palette)],
    [options.multiples, () => bench.drawMultiples(found.value, options.palette)],
    [options.map, () => bench.drawFrictionMap(found.value, options.palette)],
  ] as const
  for (const [file, draw] of wanted) {
    if (file === undefined) continue
    const drawing = draw()
    const written = drawing === undefined ? undefined : bench.writeWhole(file, drawing)
    if (written !== undefined && !written.ok) return complain(written.problems, desk, json)
    if (drawing === undefined) desk.screen.err('kufe: a map needs two loads or more; none was drawn.\n')
  }
  const { seriesInWords } = await import('../show/seriesInWords.ts')
  desk.screen.out(json ? bench.seriesText(found.value) : seriesInWords(found.value, desk.screen))
  const few = found.value.series.remarks.length > 0
  return options.strict === true && few ? exitCodes.finding.code : exitCodes.ok.code
}
