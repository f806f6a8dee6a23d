import { useDeferredValue, useMemo, useRef, useSyncExternalStore } from 'react'
import type { Plan } from '../../../core/plan/index.ts'
import type { OrderedSheet, Problem } from '../../../core/terms/index.ts'
import { useKept } from '../../api/kept.ts'
import { patiently } from '../../api/patiently.ts'
import type { LabView } from '../../api/study.ts'
import type { QuestionHold } from '../../question/useQuestion.ts'
import type { LivePlan } from './livePlan.ts'
import type { Planner } from './planner.ts'

let loaded: Planner | undefined
const listeners = new Set<() => void>()

/** The sentences show first; what plans comes right behind them. */
async function load(): Promise<void> {
  const { planner } = await patiently(() => import('./planner.ts'))()
  loaded = planner
  for (const listener of listeners) listener()
}
void load()

function listen(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

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
  const plan = useSyncExternalStore(listen, () => loaded)
  const papers = useKept<LabView>('/api/lab').value?.papers
  const filled = useMemo(() => plan?.ready(hold.question, papers), [plan, hold.question, papers])
  const question = filled?.question
  const lastLive = useRef<LivePlan | null>(null)
  const live = useMemo(() => (question && plan?.live(question)) ?? null, [plan, question]) ?? lastLive.current
  lastLive.current = live
  // Replicates and soft layers take longer than a frame: they wait until the hand rests.
  const settled = useRef(question)
  if (!hold.moving) settled.current = question
  const resting = useDeferredValue(settled.current)
  const whole = useMemo(() => resting && plan?.full(resting), [plan, resting])
  const full = whole?.ok === true ? whole.value : null
  const sheet = useMemo(() => (full === null ? null : (plan?.sheetOf(full) ?? null)), [plan, full])
  const problems = [...(filled?.problems ?? []), ...(whole === undefined || whole.ok ? [] : whole.problems)]
  return { live, full, sheet, taken: filled?.taken ?? [], problems }
}
