import {
  type DriftExplanation,
  type EwmaPoint,
  ewmaChart,
  explainDrift,
  type IndividualsChart,
  individualsChart,
  type RuleSetName,
  type RunRuleName,
  ruleSets,
  runAlarms,
  runRuleWords,
} from '../stats/judging/index.ts'

/** One measurement of the check standard. */
export interface WatchedValue {
  /** Stable name of the record. */
  readonly record: string
  /** Day or other label. */
  readonly label: string
  readonly friction: number
  /** Days since the first, where all days are known. */
  readonly day: number | null
  readonly temperature: number | null
  readonly ballSet: string | null
  readonly operator: string | null
}

/** How the rig is watched. */
export interface WatchSetup {
  /** Values, from the first on, that the limits come from. */
  readonly baseline: number
  readonly rules: RuleSetName
  /** Whether a weighted mean is held as well. */
  readonly ewma: boolean
}

/** What alarmed: a run rule, a moving range, or the weighted mean. */
export type WatchAlarmKind = RunRuleName | 'movingRange' | 'weightedMean'

/** An alarm: which value completed it, and where the pattern began. */
export interface WatchAlarm {
  readonly kind: WatchAlarmKind
  readonly record: string
  readonly label: string
  readonly from: number
  readonly at: number
  readonly words: string
}

/** A check standard over time. */
export interface WatchedSeries {
  readonly values: readonly WatchedValue[]
  readonly chart: IndividualsChart
  readonly ewma: readonly EwmaPoint[] | null
  readonly alarms: readonly WatchAlarm[]
  /** null where too few values are there for their causes. */
  readonly drift: DriftExplanation | null
}

/** Fewest values from which limits can be drawn at all; a chart from so few alarms too often, and its page says so. */
export const fewestWatched = 5

/** Weight 0.2 with limits at 2.962 standard deviations alarms once in 500 values (Lucas & Saccucci 1990, from memory). */
const ewmaSetting = { weight: 0.2, width: 2.962 } as const

/**
 * Charts, alarms and drift of a check standard. Alarms within the baseline count as well: a baseline with an alarm in it is none.
 * Throws RangeError under five values.
 */
export function watchedSeries(values: readonly WatchedValue[], setup: WatchSetup): WatchedSeries {
  if (!(values.length >= fewestWatched)) {
    throw new RangeError(`a watch needs ${fewestWatched} values, got ${values.length}`)
  }
  const frictions = values.map(({ friction }) => friction)
  const chart = individualsChart(frictions, Math.min(setup.baseline, values.length))
  const { centre, deviation } = chart
  const ewma = setup.ewma && deviation > 0 ? ewmaChart(frictions, { centre, deviation, ...ewmaSetting }) : null
  return { values, chart, ewma, alarms: alarmsOf(values, { chart, ewma, setup }), drift: driftOf(values) }
}

interface Charts {
  readonly chart: IndividualsChart
  readonly ewma: readonly EwmaPoint[] | null
  readonly setup: WatchSetup
}

function alarmsOf(values: readonly WatchedValue[], { chart, ewma, setup }: Charts): readonly WatchAlarm[] {
  const { centre, deviation, movingRanges, rangeUpper } = chart
  if (!(deviation > 0)) return []
  const z = values.map(({ friction }) => (friction - centre) / deviation)
  const found = [
    ...runAlarms(z, ruleSets[setup.rules]).map(({ rule, from, at }) => ({
      kind: rule,
      from,
      at,
      words: runRuleWords[rule],
    })),
    ...movingRanges.flatMap((range, i) =>
      range > rangeUpper
        ? [
            {
              kind: 'movingRange' as const,
              from: i,
              at: i + 1,
              words: 'a step from the value before beyond the limit of moving ranges',
            },
          ]
        : [],
    ),
    ...(ewma ?? []).flatMap(({ alarm }, at) =>
      alarm ? [{ kind: 'weightedMean' as const, from: at, at, words: 'the weighted mean beyond its limits' }] : [],
    ),
  ]
  const first = found.filter(
    ({ kind, at }) => kind === 'beyondThree' || !found.some((other) => other.kind === kind && other.at === at - 1),
  )
  return first
    .toSorted((a, b) => a.at - b.at)
    .map((alarm) => ({ ...alarm, record: values[alarm.at].record, label: values[alarm.at].label }))
}

/** Numbers that vary by less tell nothing: days, and kelvin. */
const leastSpread = { day: 2, temperature: 0.5 } as const

/** What moved the rig: time, temperature, ball set and operator, as far as they are known for all values. */
function driftOf(values: readonly WatchedValue[]): DriftExplanation | null {
  const numbers = (['day', 'temperature'] as const).flatMap((name) => {
    const known = values.flatMap((value) => value[name] ?? [])
    const spread = Math.max(...known) - Math.min(...known)
    return known.length === values.length && spread >= leastSpread[name] ? [{ name, values: known }] : []
  })
  const kinds = (
    [
      ['ballSet', 'ball set'],
      ['operator', 'operator'],
    ] as const
  ).flatMap(([key, name]) => {
    const known = values.flatMap((value) => value[key] ?? [])
    return known.length === values.length ? [{ name, values: known }] : []
  })
  if (numbers.length + kinds.length === 0) return null
  return (
    explainDrift(
      values.map(({ friction }) => friction),
      { numbers, kinds },
    ) ?? null
  )
}
