import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly bench: boolean
  readonly out?: string
  readonly json?: true
}

export const demoVerb: Verb = {
  name: 'demo',
  summary: 'see invented records go the whole way, with what to look at',
  description:
    'Reduces invented records that come with the program, of a workshop that chooses a lacquer for wooden drawer ' +
    'runners and of a kitchen that compares oat drinks, and says what is to be seen in each. Nobody measured them. On a ' +
    'terminal it shows one and then serves the bench with all of them.',
  examples: ['kufe demo', 'kufe demo lacquer-a-tilted', 'kufe demo --out drawer-demo'],
  define: (command, run) => {
    command
      .argument('[names...]', 'records to show; one of each kind if left out')
      .option('-o, --out <folder>', 'also write the drawing and the JSON of each record into this folder')
      .option('--no-bench', 'end after the terminal, without opening the bench')
      .option('--json', 'answer for machines: a list of results as JSON in SI units')
      .action((names: readonly string[], options: Options) => run((desk) => demo(names, options, desk)))
  },
}

/** What the terminal shows before the bench opens. */
const tour = ['wax']

/** Somebody sits there and asked for nothing in particular. */
const isTourOf = (names: readonly string[], { bench, json, out }: Options, { screen }: Desk): boolean =>
  names.length === 0 && bench && !json && out === undefined && screen.terminal === true

async function demo(names: readonly string[], options: Options, desk: Desk): Promise<number> {
  const { demosNamed, reduceDemo, resultDocument } = await import('../../bench/index.ts')
  const { demoEnd, demoInWords, demoOpening } = await import('../show/demoInWords.ts')
  const { writeDemo } = await import('../writeDemo.ts')
  const json = options.json === true
  const isTour = isTourOf(names, options, desk)
  const demos = demosNamed(isTour ? tour : names)
  if (!demos.ok) return complain(demos.problems, desk, json)
  if (!json) desk.screen.out(demoOpening(desk.screen))
  const documents: object[] = []
  for (const one of demos.value) {
    const shown = await reduceDemo(one, desk.outside)
    const written = shown.ok ? writeDemo(shown.value, options.out) : shown
    if (!shown.ok || !written.ok) return complain(written.ok ? [] : written.problems, desk, json)
    if (!json) desk.screen.out(demoInWords(shown.value, desk.screen))
    documents.push(resultDocument(shown.value.reduced))
  }
  desk.screen.out(json ? `${JSON.stringify(documents, null, 2)}\n` : demoEnd(options.out, desk.screen))
  if (!isTour) return exitCodes.ok.code
  const { serveDemo } = await import('./serve.ts')
  return serveDemo({ demo: true, by: 'demo' }, desk)
}
