import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

export const stickSlipVerb: Verb = {
  name: 'stick-slip',
  summary: 'see where the contact sticks and slips, and whose vibration it is',
  description:
    'Looks at every step of a record for cycles of sticking and slipping: share of the time that it sticks, amplitude and ' +
    'frequency with 95 % intervals, and between which speeds it ends. Tells it from waves fixed to the turn, from the ' +
    "controller's own oscillation and from ringing of the rig.",
  examples: [
    'kufe stick-slip drawer-b.csv --setup drawer.yaml',
    'kufe stick-slip drawer-b.csv --setup drawer.yaml --svg vibration.svg --json',
  ],
  define: (command, run) => {
    addReadingOptions(command).action((file: string, options: ReadingOptions) =>
      run((desk) => stickSlip(file, options, desk)),
    )
  },
}

async function stickSlip(file: string, options: ReadingOptions, desk: Desk): Promise<number> {
  const { drawStickSlip, stickSlipOfFile, stickSlipText, writeWhole } = await import('../../bench/stickSlip/index.ts')
  const json = options.json === true
  const found = await stickSlipOfFile(reduceArgs(file, options, desk), desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawStickSlip(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { stickSlipInWords } = await import('../show/stickSlipInWords.ts')
  desk.screen.out(json ? stickSlipText(found.value) : stickSlipInWords(found.value, desk.screen))
  const sticks = found.value.stickSlip.criticalSpeed !== null
  return options.strict === true && sticks ? exitCodes.finding.code : exitCodes.ok.code
}
