import { relative } from 'node:path'
import { type ReducedDemo, signsOf } from '../../bench/index.ts'
import { painted, type Screen } from '../screen.ts'
import { curveInWords } from './curveInWords.ts'
import { pointTable } from './pointTable.ts'
import { headLine, plotOf } from './reductionInWords.ts'
import { remarksInWords } from './remarksInWords.ts'
import { wrap } from './wrap.ts'

const widthOf = (screen: Screen): number => Math.min(screen.width, 110)

/** What the demo is, and that nobody measured it. */
export function demoOpening(screen: Screen): string {
  const text =
    'These records are invented: a virtual rig made them, nobody measured them. A small workshop picks a lacquer for ' +
    'wooden drawer runners; a kitchen lab compares oat drinks on soft silicone. Each goes the whole way from the raw ' +
    'table to a curve.'
  return `${wrap(text, widthOf(screen))}\n`
}

/** One record of the demo: what to look at, the points, the curve, and how far to believe it. */
export function demoInWords({ demo, files, reduced }: ReducedDemo, screen: Screen): string {
  const width = widthOf(screen)
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const { reduction, curve } = reduced
  const { sentence, plateau } = reduction.window
  const sections = [
    `${rule(width, screen)}\n${headLine(reduced, screen)}\n${painted(screen, say(demo.look), 'accent')}`,
    pointTable(reduction.points, signsOf(reduction.points)),
    plotOf(reduced, screen),
    [sentence, plateau.sentence, ...(curve === null ? [] : [curveInWords(curve)])].map(say).join('\n'),
    remarksInWords(reduced, screen, width),
    painted(screen, `  kufe reduce ${fromHere(files.record)} \\\n    --setup ${fromHere(files.setup)}`, 'quiet'),
  ]
  return `\n${sections.filter((section) => section !== '').join('\n\n')}\n`
}

const rule = (width: number, { unicode }: Screen): string => (unicode ? '─' : '-').repeat(width)

/** The path as it would be typed in the current folder, where that is the shorter one. */
function fromHere(file: string): string {
  const near = relative('.', file)
  return near.length < file.length ? near : file
}

/** Where to go from here. */
export function demoEnd(out: string | undefined, screen: Screen): string {
  const written = out === undefined ? 'Drawings and JSON: kufe demo --out FOLDER.' : `Drawings and JSON are in ${out}.`
  const text = `${written} For a record of your own: kufe setup balls-on-plate --out setup.yaml, fill it in, then kufe reduce FILE --setup setup.yaml.`
  return `\n${wrap(text, widthOf(screen))}\n`
}
