import { schemaVersion } from '../../../core/terms/index.ts'
import { limitFigure, type PaletteName } from '../../../figure/index.ts'
import type { JudgedLimits } from './judgeLimits.ts'
import { limitInWords, ruleInWords } from './limitWords.ts'

/** Judged limits for machines: SI, infinities as null. */
export const limitText = ({ title, ask, answers, left, paper }: JudgedLimits): string =>
  `${JSON.stringify({ schemaVersion, title, limit: ask.tolerance, rule: ask.rule, asked: { at: ask.at, from: ask.from, to: ask.to }, paper, answers, left }, null, 2)}\n`

/** One sample against the limit as a picture. Undefined where no speed could be judged. */
export function drawLimit(
  { ask, answers }: Pick<JudgedLimits, 'ask' | 'answers'>,
  place: number,
  palette: PaletteName,
): string | undefined {
  const answer = answers[place]
  if (answer.speeds.length === 0) return undefined
  const caption = `${limitInWords(ask.tolerance)}; ${ask.rule.kind === 'guarded' ? `guard band w = ${ask.rule.factor === 1 ? '' : `${ask.rule.factor} `}U` : ruleInWords(ask.rule).split(':')[0].split(' (')[0]}; ${answer.replicates === 1 ? 'one mounting' : `${answer.replicates} mountings`}`
  return limitFigure(
    {
      title: `${answer.sample} against a limit`,
      caption: caption.charAt(0).toUpperCase() + caption.slice(1),
      lower: ask.tolerance.lower,
      upper: ask.tolerance.upper,
      verdict: answer.verdict,
      sentence: answer.sentence,
      speeds: answer.speeds,
    },
    { palette },
  )
}
