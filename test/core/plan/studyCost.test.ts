import { describe, expect, test } from 'vitest'
import { type AskKind, differencesSeen, type Plan, planOf, studyCost } from '../../../src/core/plan/index.ts'
import { lacquerQuestion } from './questions.ts'

function planned(kind: AskKind, deciding: Partial<Plan['question']['deciding']> = {}): Plan {
  const plan = planOf({
    ...lacquerQuestion,
    ask: { ...lacquerQuestion.ask, kind },
    deciding: { ...lacquerQuestion.deciding, ...deciding },
  })
  if (!plan.ok) throw new Error('the question must be possible')
  return plan.value
}

describe('cost of a study', () => {
  test('an order of samples costs the runs of its order', () => {
    const plan = planned('rank', { checkStandard: 'waxed plate' })
    const { replicates, runs, days, time } = studyCost(plan, 3600)
    expect(replicates).toBe(Math.max(3, plan.decision.replicates?.replicates ?? 0))
    expect(runs).toBe(plan.decision.order.length)
    expect(days).toBe(plan.decision.days)
    expect(time).toBe(runs * 3600)
  })

  // 27 replicates of one sample half a scatter inside its limit: Cohen 1988, 2.4 (from memory); two samples, eight runs a day.
  test('a limit costs the replicates of the one-sample test', () => {
    const scatter = { difference: 0.03, repeatability: 0.06, power: 0.8, significance: 0.05, runsPerDay: 8 }
    expect(studyCost(planned('limit', scatter), 60)).toMatchObject({ replicates: 27, runs: 54, days: 7, time: 3240 })
  })

  test.for<AskKind>(['regimes', 'last'])('the kind %s takes three replicates, to see their scatter', (kind) => {
    expect(studyCost(planned(kind), 60)).toMatchObject({ replicates: 3, answer: null, runs: 6, days: 1 })
  })

  test('a limit that cannot be told has no number', () => {
    expect(studyCost(planned('limit', { difference: 1e-6, repeatability: 5 }), 60).replicates).toBeNull()
  })

  test('more replicates see smaller differences', () => {
    const seen = differencesSeen(lacquerQuestion).map(({ difference }) => difference)
    expect(seen).toEqual([...seen].sort((a, b) => b - a))
  })

  test('refuses a time that is none', () => {
    expect(() => studyCost(planned('rank'), Number.NaN)).toThrow(RangeError)
  })
})
