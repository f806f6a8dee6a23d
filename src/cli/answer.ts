import { drawCurve, type ReducedRecord, resultText, writeWhole } from '../bench/index.ts'
import { complain } from './complain.ts'
import { exitCodes } from './exitCodes.ts'
import { findings } from './findings.ts'
import type { ReadingOptions } from './readingOptions.ts'
import type { Screen } from './screen.ts'
import { fitInWords } from './show/fitInWords.ts'
import { reductionInWords } from './show/reductionInWords.ts'
import type { Desk } from './verb.ts'

type AnswerOptions = Pick<ReadingOptions, 'json' | 'svg' | 'palette' | 'strict'>
type Words = (record: ReducedRecord, screen: Screen) => string

export const answerReduction = (record: ReducedRecord, options: AnswerOptions, desk: Desk): number =>
  answer(reductionInWords, record, { options, desk })

export const answerFit = (record: ReducedRecord, options: AnswerOptions, desk: Desk): number =>
  answer(fitInWords, record, { options, desk })

/** Writes the drawing, then gives the answer: a document for machines or words for people. */
function answer(
  words: Words,
  record: ReducedRecord,
  { options, desk }: { options: AnswerOptions; desk: Desk },
): number {
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawCurve(record, options.palette))
    if (!written.ok) return complain(written.problems, desk, options.json === true)
  }
  desk.screen.out(options.json === true ? resultText(record) : words(record, desk.screen))
  if (options.strict !== true) return exitCodes.ok.code
  const found = findings(record)
  for (const finding of found) desk.screen.err(`kufe: ${finding}\n`)
  return found.length > 0 ? exitCodes.finding.code : exitCodes.ok.code
}
