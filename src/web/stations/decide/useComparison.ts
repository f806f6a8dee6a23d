import { useMemo } from 'react'
import {
  askOf,
  chosenSamples,
  compareDefaults,
  compareSamples,
  type DecisionPaper,
  decisionFrom,
  marginAsked,
  type Replicate,
  usualDifference,
} from '../../../core/decide/index.ts'
import type { Comparison, Problem } from '../../../core/terms/index.ts'
import type { ReplicatesAnswer } from '../../../server/contract/index.ts'
import { type Kept, useKept } from '../../api/kept.ts'
import { type PaperHold, studyPaper, usePaper } from '../../api/usePaper.ts'
import type { QuestionPaper } from '../../question/questionPaper.ts'

/** A study's samples held against each other, as far as they are here, and the paper that says how. */
export interface ComparisonHold {
  readonly gathered: Kept<ReplicatesAnswer>
  readonly paper: PaperHold<DecisionPaper>
  readonly decision: DecisionPaper
  /** The margin that counts, and whether nobody has said it in this study. */
  readonly margin: number
  readonly marginAssumed: boolean
  readonly comparison: Comparison | undefined
  readonly problems: readonly Problem[]
}

/** While a hand moves; at rest as many as at the terminal, so that all faces say the same. */
const quickDraws = 1500

/** Compares anew whenever a record, the paper or the margin under a moving hand changes. */
export function useComparison(
  study: string,
  question: QuestionPaper | null,
  preview: number | undefined,
): ComparisonHold {
  const gathered = useKept<ReplicatesAnswer>(`/api/studies/${encodeURIComponent(study)}/replicates`)
  const paper = usePaper<DecisionPaper>(studyPaper(study, 'decision'))
  const decision = useMemo(() => decisionFrom(paper.content), [paper.content])
  const usual = decision.scale === 'difference' ? usualDifference : (marginAsked(question) ?? compareDefaults.margin)
  const margin = preview ?? decision.margin ?? usual
  const draws = preview === undefined ? compareDefaults.draws : quickDraws
  const outcome = useMemo(
    () => (gathered.value === undefined ? undefined : compared(gathered.value, decision, { margin, draws })),
    [gathered.value, decision, margin, draws],
  )
  return {
    ...{ gathered, paper, decision, margin },
    marginAssumed: decision.margin === null,
    comparison: outcome?.ok === true ? outcome.value : undefined,
    problems: outcome === undefined || outcome.ok ? [] : outcome.problems,
  }
}

function compared(
  { replicates }: ReplicatesAnswer,
  decision: DecisionPaper,
  said: { readonly margin: number; readonly draws: number },
) {
  const ask = askOf(decision)
  const all: readonly Replicate[] = chosenSamples(replicates, decision.samples).replicates
  // A record that has left the study since, or whose sample is left aside, takes its removal with it.
  const removals = decision.removals.filter(({ record }) => all.some((one) => one.record === record))
  return compareSamples(all, { ...ask, removals, options: { ...ask.options, ...said } })
}
