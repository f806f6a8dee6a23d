import { Option } from 'commander'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly at?: readonly string[]
  readonly without?: readonly string[]
  readonly json?: true
  readonly svg?: string
  readonly palette: 'light' | 'dark' | 'print'
}

export const roundVerb: Verb = {
  name: 'round',
  summary: 'tell the precision of a round of several laboratories',
  description:
    'Repeatability and reproducibility from the curves of many laboratories at every speed that all of them have (ISO 5725-2, ' +
    'ASTM E691), with h and k of each laboratory and the tests of Cochran and Grubbs. Whoever stands out is flagged, never removed: ' +
    '--without does that, with a reason.',
  examples: [
    'kufe round round.csv',
    'kufe round north=n1.json north=n2.json south=s1.json south=s2.json',
    'kufe round round.csv --without "harbour=used another ball" --svg round.svg',
  ],
  define: (command, run) => {
    const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
    command
      .argument('<curves...>', 'tables with laboratory, replicate, speed (unit), friction; or LABORATORY=result.json')
      .option('--at <speed>', 'tell this speed; may be repeated; those of the curves where left out', several)
      .option('--without <laboratory=reason>', 'take a laboratory out; may be repeated', several)
      .option('--svg <file>', 'draw h, k and the precision over the speeds')
      .addOption(
        new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
      )
      .option('--json', 'answer for machines: JSON on standard output')
      .action((words: readonly string[], options: Options) => run((desk) => judged(words, options, desk)))
  },
}

async function judged(
  words: readonly string[],
  { at = [], without = [], json, svg, palette }: Options,
  desk: Desk,
): Promise<number> {
  const { drawRound, judgeRound, roundText } = await import('../../bench/decide/round/index.ts')
  const found = judgeRound({ words, at, without })
  if (!found.ok) return complain(found.problems, desk, json === true)
  if (svg !== undefined) {
    const { writeDrawings } = await import('../writeDrawings.ts')
    const written = await writeDrawings(svg, [drawRound(found.value, palette)])
    if (!written.ok) return complain(written.problems, desk, json === true)
  }
  const { roundInWords } = await import('../show/roundInWords.ts')
  desk.screen.out(json === true ? roundText(found.value) : roundInWords(found.value, desk.screen))
  return exitCodes.ok.code
}
