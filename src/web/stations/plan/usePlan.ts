import { useDeferredValue, useMemo, useRef } from 'react'
import { fillFromTables, type Plan, planOf, runSheetOf } from '../../../core/plan/index.ts'
import type { OrderedSheet, Problem } from '../../../core/terms/index.ts'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { type LivePlan, livePlan } from './livePlan.ts'

/** A plan as the station shows it: the live part at each frame, the whole of it when the hand rests. */
export interface PlanHold {
  /** Follows within a frame; the last one that could be drawn where the question is impossible. */
  readonly live: LivePlan | null
  /** null until it is worked out for the first time, or where the question is impossible. */
  readonly full: Plan | null
  readonly sheet: OrderedSheet | null
  /** What was taken from the tables of bodies and liquids. */
  readonly taken: readonly string[]
  readonly problems: readonly Problem[]
}

export function usePlan(hold: QuestionHold): PlanHold {
  const filled = useMemo(() => fillFromTables(hold.question), [hold.question])
  const question = filled.ok ? filled.value.question : hold.question
  const lastLive = useRef<LivePlan | null>(null)
  const live = useMemo(() => livePlan(question), [question]) ?? lastLive.current
  lastLive.current = live
  // Replicates and soft layers take longer than a frame: they wait until the hand rests.
  const settled = useRef(question)
  if (!hold.moving) settled.current = question
  const resting = useDeferredValue(settled.current)
  const plan = useMemo(() => planOf(resting), [resting])
  const sheet = useMemo(() => (plan.ok && plan.value.suggestion.possible ? runSheetOf(plan.value) : null), [plan])
  const problems = [...(filled.ok ? [] : filled.problems), ...(plan.ok ? [] : plan.problems)]
  return { live, full: plan.ok ? plan.value : null, sheet, taken: filled.ok ? filled.value.taken : [], problems }
}
