import { type ReducedRecord, resultText } from '../bench/reduce/index.ts'
import { complain } from './complain.ts'
import { exitCodes } from './exitCodes.ts'
import { findings } from './findings.ts'
import type { ReadingOptions } from './readingOptions.ts'
import type { Screen } from './screen.ts'
import type { Desk } from './verb.ts'

type AnswerOptions = Pick<ReadingOptions, 'json' | 'svg' | 'palette' | 'strict'>
type Words = (record: ReducedRecord, screen: Screen) => string

export const answerReduction = (record: ReducedRecord, options: AnswerOptions, desk: Desk): Promise<number> =>
  answer(record, options, { desk, words: async () => (await import('./show/reductionInWords.ts')).reductionInWords })

export const answerFit = (record: ReducedRecord, options: AnswerOptions, desk: Desk): Promise<number> =>
  answer(record, options, { desk, words: async () => (await import('./show/fitInWords.ts')).fitInWords })

/** Writes the drawing, then gives the answer: a document for machines or words for people. Loads what is asked for alone. */
async function answer(
  record: ReducedRecord,
  options: AnswerOptions,
  { desk, words }: { desk: Desk; words: () => Promise<Words> },
): Promise<number> {
  if (options.svg !== undefined) {
    const { drawCurve, writeWhole } = await import('../bench/index.ts')
    const written = writeWhole(options.svg, drawCurve(record, options.palette))
    if (!written.ok) return complain(written.problems, desk, options.json === true)
  }
  desk.screen.out(options.json === true ? resultText(record) : (await words())(record, desk.screen))
  if (options.strict !== true) return exitCodes.ok.code
  const found = findings(record)
  for (const finding of found) desk.screen.err(`kufe: ${finding}\n`)
  return found.length > 0 ? exitCodes.finding.code : exitCodes.ok.code
}
