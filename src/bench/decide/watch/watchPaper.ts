import type { WatchSetup } from '../../../core/decide/index.ts'
import { type RuleSetName, ruleSets } from '../../../core/stats/judging/index.ts'
import type { MetrePerSecond } from '../../../core/terms/index.ts'

/** Which sample is watched, and how. */
export interface Watch extends WatchSetup {
  /** Id of the sample in the lab. */
  readonly sample: string
  readonly at: MetrePerSecond
}

/** What somebody has said an alarm was. */
export interface AlarmAnswer {
  readonly alarm: string
  readonly text: string
}

/** What is taken where nobody says otherwise. */
export const watchDefaults = { baseline: 20, rules: 'westernElectric', ewma: true } as const satisfies WatchSetup

/** A watch as a paper holds it; undefined for content that is none of ours. */
export function watchFrom(content: unknown): Watch | undefined {
  if (typeof content !== 'object' || content === null) return undefined
  const { sample, at, baseline, rules, ewma } = content as Record<string, unknown> // each is looked at below
  if (typeof sample !== 'string' || !(typeof at === 'number' && at > 0)) return undefined
  const known = (Object.keys(ruleSets) as RuleSetName[]).find((name) => name === rules)
  return {
    ...{ sample, at, rules: known ?? watchDefaults.rules },
    baseline:
      typeof baseline === 'number' && Number.isInteger(baseline) && baseline >= 2 ? baseline : watchDefaults.baseline,
    ewma: ewma !== false,
  }
}

/** An answer as a paper holds it. */
export function answerFrom(content: unknown): AlarmAnswer | undefined {
  if (typeof content !== 'object' || content === null) return undefined
  const { alarm, text } = content as Record<string, unknown> // both are looked at below
  return typeof alarm === 'string' && typeof text === 'string' ? { alarm, text } : undefined
}
