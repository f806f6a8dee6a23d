import type { PlanQuestion } from '../../core/plan/index.ts'

/** What kind of answer is wanted: an order of samples, a limit kept, the regimes, a feel in hand or mouth, or lasting. */
export type QuestionKind = 'rank' | 'limit' | 'regimes' | 'feel' | 'last'

type Said<T> = T extends readonly unknown[] ? T : T extends object ? { readonly [K in keyof T]?: Said<T[K]> } : T

/**
 * The study's `question` paper: a plan's question in SI as far as somebody has said it. What is absent stands at its default, and
 * is printed in lighter ink until somebody confirms or changes it.
 */
export interface QuestionPaper extends Said<Omit<PlanQuestion, 'fixture'>> {
  readonly fixture?: PlanQuestion['fixture']
  readonly kind?: QuestionKind
}
