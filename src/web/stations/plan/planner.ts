import {
  fillFromTables,
  ownFromPapers,
  type Plan,
  type PlanQuestion,
  planOf,
  runSheetOf,
} from '../../../core/plan/index.ts'
import type { OrderedSheet, Outcome, Problem } from '../../../core/terms/index.ts'
import { type LivePlan, livePlan } from './livePlan.ts'

/** A question with its gaps closed from the tables of bodies and liquids; as it is where they do not help. */
export interface ReadyQuestion {
  readonly question: PlanQuestion
  readonly taken: readonly string[]
  readonly problems: readonly Problem[]
}

/** The lab's papers, among them its own bodies and liquids; undefined while they are not here. */
type Papers = Parameters<typeof ownFromPapers>[0] | undefined

let last: { readonly key: string; readonly papers: Papers; readonly filled: ReadyQuestion } | undefined

/** Fills from the tables and the lab's own entries anew only where a body, the liquid or the temperature changed: while a hand moves a load they stay. */
function ready(question: PlanQuestion, papers: Papers): ReadyQuestion {
  const { pair, bears, liquid, pressureViscosity, run } = question
  const key = JSON.stringify([pair, bears, liquid, pressureViscosity, run.temperature])
  if (last?.key !== key || last.papers !== papers) {
    const filled = fillFromTables(question, ownFromPapers(papers ?? []))
    const result = filled.ok ? { ...filled.value, problems: [] } : { question, taken: [], problems: filled.problems }
    last = { key, papers, filled: result }
  }
  const { filled } = last
  const { pair: bodies, bears: strengths, liquid: known, pressureViscosity: thickening, flow, heat } = filled.question
  return {
    ...filled,
    question: {
      ...question,
      pair: bodies,
      bears: strengths,
      ...(known === undefined ? {} : { liquid: known }),
      ...(thickening === undefined ? {} : { pressureViscosity: thickening }),
      ...(flow === undefined ? {} : { flow }),
      ...(heat === undefined ? {} : { heat }),
    },
  }
}

const live = (question: PlanQuestion): LivePlan | null => livePlan(question)

const full = (question: PlanQuestion): Outcome<Plan> => planOf(question)

const sheetOf = (plan: Plan): OrderedSheet | null => (plan.suggestion.possible ? runSheetOf(plan) : null)

/** All that plans, loaded behind the sentences. */
export const planner = { ready, live, full, sheetOf }

export type Planner = typeof planner
