import { type Random, randomFrom } from '../../../core/numeric/index.ts'
import { studentTQuantile, summary } from '../../../core/stats/index.ts'
import {
  type DecisionRule,
  judgeLimit,
  type RuleSetName,
  ruleSets,
  runLength,
  verdictOfAll,
} from '../../../core/stats/judging/index.ts'
import type { Outside } from '../../../core/terms/index.ts'
import { type ScatterRate, scatterRates } from './scatterRates.ts'

/** How often verdicts against a limit go wrong where the truth lies right on it, which is the worst place. */
export interface LimitRate {
  readonly rule: string
  /** Mountings; Infinity where the uncertainty is known. */
  readonly replicates: number
  readonly speeds: number
  /** Correlation of the scatter between speeds. */
  readonly correlation: number
  /** Truth just beyond the limit, and called a pass; just inside, and called a fail. */
  readonly wrongPass: number
  readonly wrongFail: number
  readonly standardError: number
  /** What the rule promises for each. */
  readonly promised: number
}

/** How long a watch stays silent. */
export interface WatchRate {
  readonly rules: string
  readonly baseline: number | null
  /** In standard deviations, from the first value on. */
  readonly shift: number
  readonly mean: number
  readonly standardError: number
  readonly median: number
}

/** The tables of one study. */
export interface VerdictRates {
  readonly draws: number
  readonly seed: number
  readonly limits: readonly LimitRate[]
  readonly watches: readonly WatchRate[]
  readonly scatter: readonly ScatterRate[]
}

const rules: readonly { readonly name: string; readonly rule: DecisionRule; readonly promised: number }[] = [
  { name: 'simple', rule: { kind: 'simple' }, promised: 0.5 },
  { name: 'guard band w = U (95 %)', rule: { kind: 'guarded', factor: 1, coverage: 0.95 }, promised: 0.025 },
  { name: 'risk 5 %', rule: { kind: 'risk', mostRisk: 0.05 }, promised: 0.05 },
]

const cases = [
  { replicates: Number.POSITIVE_INFINITY, speeds: 1, correlation: 0 },
  { replicates: 3, speeds: 1, correlation: 0 },
  { replicates: 5, speeds: 1, correlation: 0 },
  { replicates: 3, speeds: 10, correlation: 0 },
  { replicates: 5, speeds: 10, correlation: 0 },
  { replicates: 5, speeds: 10, correlation: 0.9 },
  { replicates: Number.POSITIVE_INFINITY, speeds: 10, correlation: 0 },
] as const

/** Counts wrong verdicts and silent stretches by simulation; equal seeds give equal tables. */
export function verdictRates(
  { draws, seed }: { readonly draws: number; readonly seed: number },
  outside: Outside,
): VerdictRates {
  const steps = rules.length * cases.length + watchCases.length
  let done = 0
  const limits = rules.flatMap(({ name, rule, promised }, r) =>
    cases.map((one, c): LimitRate => {
      const counted = limitRate({ rule, draws, ...one }, randomFrom(seed, 100 * r + c))
      outside.progress('tables', ++done, steps)
      return { rule: name, ...one, ...counted, promised }
    }),
  )
  const watches = watchCases.map(({ rules: set, ewma, baseline, shift }, i): WatchRate => {
    const setting = {
      rules: set === null ? [] : ruleSets[set],
      shift,
      runs: Math.max(200, Math.round(draws / 2)),
      seed: seed + i,
    }
    const weighted = ewma ? { ewma: { weight: 0.2, width: 2.962 } } : {}
    const { mean, standardError, median } = runLength({
      ...setting,
      ...weighted,
      ...(baseline === null ? {} : { baseline }),
    })
    outside.progress('tables', ++done, steps)
    return { rules: watchWords(set, ewma), ...{ baseline, shift, mean, standardError, median } }
  })
  return { draws, seed, limits, watches, scatter: scatterRates(Math.max(50, Math.round(draws / 40)), seed) }
}

interface Case {
  readonly rule: DecisionRule
  readonly draws: number
  readonly replicates: number
  readonly speeds: number
  readonly correlation: number
}

/** Truth right on an upper limit of zero at every speed: a pass is wrong if it lies a hair beyond, a fail if a hair inside. */
function limitRate({ rule, draws, replicates, speeds, correlation }: Case, random: Random) {
  let passes = 0
  let fails = 0
  for (let i = 0; i < draws; i++) {
    const verdicts = assessed({ replicates, speeds, correlation }, random).map(
      (one) => judgeLimit(one, { tolerance: { lower: null, upper: 0 }, rule, speeds }).verdict,
    )
    const verdict = verdictOfAll(verdicts)
    if (verdict === 'pass') passes++
    if (verdict === 'fail') fails++
  }
  const share = Math.max(passes, fails, 1) / draws
  return {
    wrongPass: passes / draws,
    wrongFail: fails / draws,
    standardError: Math.sqrt((share * (1 - Math.min(share, 0.999))) / draws),
  }
}

/** Means with their uncertainties at each speed; the scatter of a mounting is partly that of all speeds. */
function assessed(
  { replicates, speeds, correlation }: Pick<Case, 'replicates' | 'speeds' | 'correlation'>,
  random: Random,
) {
  const known = !Number.isFinite(replicates)
  const mountings = known ? 1 : replicates
  const values = Array.from({ length: speeds }, () => new Float64Array(mountings))
  for (let m = 0; m < mountings; m++) {
    const common = random.normal()
    for (const at of values) at[m] = Math.sqrt(correlation) * common + Math.sqrt(1 - correlation) * random.normal()
  }
  return values.map((at) => {
    const { mean, standardDeviation } = summary(at)
    if (known) return { value: mean, standardUncertainty: 1 }
    return {
      value: mean,
      standardUncertainty: standardDeviation / Math.sqrt(mountings),
      degreesOfFreedom: mountings - 1,
    }
  })
}

interface WatchCase {
  readonly rules: RuleSetName | null
  readonly ewma: boolean
  readonly baseline: number | null
  readonly shift: number
}

const sets: readonly Pick<WatchCase, 'rules' | 'ewma'>[] = [
  { rules: 'one', ewma: false },
  { rules: 'westernElectric', ewma: false },
  { rules: 'nelson', ewma: false },
  { rules: null, ewma: true },
  { rules: 'westernElectric', ewma: true },
]

const watchCases: readonly WatchCase[] = [
  ...sets.flatMap((set) => [0, 0.5, 1, 2].map((shift) => ({ ...set, baseline: null, shift }))),
  ...[10, 20, 50].flatMap((baseline) =>
    [{ rules: 'one', ewma: false } as const, { rules: 'westernElectric', ewma: true } as const].map((set) => ({
      ...set,
      baseline,
      shift: 0,
    })),
  ),
]

function watchWords(rules: RuleSetName | null, ewma: boolean): string {
  const names = { one: 'beyond three', westernElectric: 'Western Electric', nelson: 'Nelson' }
  return [...(rules === null ? [] : [names[rules]]), ...(ewma ? ['weighted mean'] : [])].join(' and ')
}

/** Whether a limit row keeps its promise, give or take three standard errors of the count. */
export const keepsPromise = ({ wrongPass, wrongFail, promised }: LimitRate, draws: number): boolean => {
  const slack = studentTQuantile(0.9987, Number.POSITIVE_INFINITY) * Math.sqrt((promised * (1 - promised)) / draws)
  // Sharing the risk promises half for one speed; over many, any of them fails more easily, and the table says so.
  if (promised === 0.5) return true
  return wrongPass <= promised + slack && wrongFail <= promised + slack
}
