import { fillFromTables, type Plan, type PlanQuestion, planOf, runSheetOf } from '../../../core/plan/index.ts'
import type { OrderedSheet, Outcome, Problem } from '../../../core/terms/index.ts'
import { type LivePlan, livePlan } from './livePlan.ts'

/** A question with its gaps closed from the tables of bodies and liquids; as it is where they do not help. */
export interface ReadyQuestion {
  readonly question: PlanQuestion
  readonly taken: readonly string[]
  readonly problems: readonly Problem[]
}

export function ready(question: PlanQuestion): ReadyQuestion {
  const filled = fillFromTables(question)
  return filled.ok ? { ...filled.value, problems: [] } : { question, taken: [], problems: filled.problems }
}

export const live = (question: PlanQuestion): LivePlan | null => livePlan(question)

export const full = (question: PlanQuestion): Outcome<Plan> => planOf(question)

export const sheetOf = (plan: Plan): OrderedSheet | null => (plan.suggestion.possible ? runSheetOf(plan) : null)
