import { printQuantity } from '../quantity/index.ts'
import { studentTQuantile, summary, welchSatterthwaite } from '../stats/index.ts'
import {
  type DecisionRule,
  judgeLimit,
  type LimitJudgement,
  type LimitVerdict,
  type Tolerance,
  verdictOfAll,
} from '../stats/judging/index.ts'
import { type MetrePerSecond, type Ratio, type SharedSource, sharedSources } from '../terms/index.ts'
import type { Replicate } from './replicate.ts'
import { type CurveOverSpeed, curveThrough } from './replicateCurve.ts'
import { speedGrid } from './speedGrid.ts'
import { spokenSpan, spokenSpeed } from './speedWords.ts'

/** A written limit, where it holds, and the rule by which it is judged. */
export interface LimitAsk {
  readonly tolerance: Tolerance
  readonly rule: DecisionRule
  /** Named speeds; a range where there are none. */
  readonly at: readonly MetrePerSecond[]
  /** Ends of the range; all speeds that the data cover where both are null. */
  readonly from: MetrePerSecond | null
  readonly to: MetrePerSecond | null
}

/** One speed against the limit. */
export interface LimitAtSpeed extends LimitJudgement {
  readonly slidingSpeed: MetrePerSecond
  readonly friction: number
  readonly standardUncertainty: number
  readonly degreesOfFreedom: number
  /** Ends of the interval at 95 %. */
  readonly low: number
  readonly high: number
}

/** A sample against a limit. */
export interface LimitAnswer {
  readonly sample: string
  /** Mountings that count; of one the verdict is about that mounting alone. */
  readonly replicates: number
  readonly verdict: LimitVerdict
  readonly sentence: string
  readonly speeds: readonly LimitAtSpeed[]
  /** Speeds that the limit is about and the data do not cover. */
  readonly uncovered: readonly { readonly from: MetrePerSecond; readonly to: MetrePerSecond }[]
}

/** Two ends nearer than this are one speed. */
const oneSpeed = 1.02

/**
 * Judges the friction of a sample against a limit. Its uncertainty is the scatter between mountings over √n and the shared part, of
 * one mounting its own and the shared part. All speeds must pass for a pass; one beyond the limit fails, with a wider guard for
 * as many as were looked at. Speeds that nobody measured cannot pass.
 */
export function limitOverSpeed(replicates: readonly Replicate[], ask: LimitAsk): LimitAnswer {
  if (replicates.length === 0) throw new RangeError('a limit needs a record, got none')
  const curves = replicates.map(({ points }) => curveThrough(points))
  const covered = coveredBy(replicates, curves)
  const { speeds, uncovered } = speedsOf(ask, covered)
  const steps = Math.min(...replicates.map(({ points }) => stepsIn(points, speeds)))
  const looked = Math.max(1, Math.min(speeds.length, steps))
  const judged = speeds.map((speed) => atSpeed(curves, speed, { ask, looked }))
  const said = judged.length === 0 ? 'cannotTell' : verdictOfAll(judged.map(({ verdict }) => verdict))
  const verdict = said === 'pass' && uncovered.length > 0 ? 'cannotTell' : said
  const answer = {
    sample: replicates[0].sample,
    replicates: replicates.length,
    ...{ verdict, speeds: judged, uncovered },
  }
  return { ...answer, sentence: sentenceOf(answer, ask) }
}

interface Span {
  readonly from: MetrePerSecond
  readonly to: MetrePerSecond
}

/** Speeds that all records have, where each may be believed; null where there are none. */
function coveredBy(replicates: readonly Replicate[], curves: readonly CurveOverSpeed[]): Span | null {
  const from = Math.max(...curves.map(({ slowest }, i) => Math.max(slowest, replicates[i].window.low ?? 0)))
  const to = Math.min(...curves.map(({ fastest }, i) => Math.min(fastest, replicates[i].window.high ?? fastest)))
  return to * oneSpeed >= from ? { from, to: Math.max(from, to) } : null
}

function speedsOf({ at, from, to }: LimitAsk, covered: Span | null) {
  const inside = (speed: number): boolean =>
    covered !== null && speed >= covered.from / oneSpeed && speed <= covered.to * oneSpeed
  if (at.length > 0) {
    const out = at.filter((speed) => !inside(speed)).map((speed) => ({ from: speed, to: speed }))
    return { speeds: at.filter(inside).toSorted((a, b) => a - b), uncovered: out }
  }
  if (covered === null) return { speeds: [], uncovered: [{ from: from ?? 0, to: to ?? from ?? 0 }] }
  const low = Math.max(covered.from, from ?? covered.from)
  const high = Math.min(covered.to, to ?? covered.to)
  const uncovered: Span[] = []
  if (from !== null && from < covered.from / oneSpeed)
    uncovered.push({ from, to: Math.min(covered.from, to ?? covered.from) })
  if (to !== null && to > covered.to * oneSpeed) uncovered.push({ from: Math.max(covered.to, from ?? covered.to), to })
  return { speeds: low > high ? [] : speedGrid(low, high), uncovered }
}

const stepsIn = (points: Replicate['points'], speeds: readonly number[]): number => {
  const [low, high] = [speeds[0] / oneSpeed, (speeds.at(-1) ?? 0) * oneSpeed]
  return points.filter(({ slidingSpeed }) => slidingSpeed >= low && slidingSpeed <= high).length
}

function atSpeed(
  curves: readonly CurveOverSpeed[],
  speed: MetrePerSecond,
  { ask, looked }: { readonly ask: LimitAsk; readonly looked: number },
): LimitAtSpeed {
  const logs = curves.map((curve) => curve.lnFriction(speed))
  const { mean, standardDeviation } = summary(logs)
  const several = curves.length > 1
  const between = several ? standardDeviation / Math.sqrt(curves.length) : curves[0].own(speed)
  const shared = Math.hypot(...sharedSources.map((source) => meanShared(curves, source, speed)))
  const parts = [
    { standardUncertainty: between, degreesOfFreedom: several ? curves.length - 1 : Number.POSITIVE_INFINITY },
    { standardUncertainty: shared, degreesOfFreedom: Number.POSITIVE_INFINITY },
  ]
  const friction = Math.exp(mean)
  const standardUncertainty = friction * Math.hypot(between, shared)
  const degreesOfFreedom = welchSatterthwaite(parts)
  const half = studentTQuantile(0.975, degreesOfFreedom) * standardUncertainty
  const assessed = { value: friction, standardUncertainty, degreesOfFreedom }
  return {
    slidingSpeed: speed,
    ...{ friction, standardUncertainty, degreesOfFreedom },
    low: friction - half,
    high: friction + half,
    ...judgeLimit(assessed, { tolerance: ask.tolerance, rule: ask.rule, speeds: looked }),
  }
}

const meanShared = (curves: readonly CurveOverSpeed[], source: SharedSource, speed: number): Ratio =>
  curves.reduce((sum, curve) => sum + curve.shared(source, speed), 0) / curves.length

function sentenceOf(
  { sample, verdict, speeds, uncovered, replicates }: Omit<LimitAnswer, 'sentence'>,
  ask: LimitAsk,
): string {
  const about = replicates === 1 ? `This mounting of ${sample}` : sample
  const limit = limitInWords(ask.tolerance)
  const where = (found: readonly LimitAtSpeed[]): string =>
    found.length === 1
      ? `at ${spokenSpeed(found[0].slidingSpeed)}`
      : `at ${found.length} of ${speeds.length} speeds ${spokenSpan(found[0].slidingSpeed, found[found.length - 1].slidingSpeed)}`
  const risk = (found: readonly LimitAtSpeed[]): string => {
    const most = Math.max(...found.map(({ wrong }) => wrong ?? 0))
    return most < 1e-4 ? 'under 0.01 %' : printQuantity(most, 'ratio', { digits: 2, unit: '%' })
  }
  const lacking = uncovered
    .map(({ from, to }) => (from === to ? spokenSpeed(from) : spokenSpan(from, to)))
    .join(' and ')
  switch (verdict) {
    case 'pass':
      return `${about} passes: it keeps to ${limit} ${speeds.length === 1 ? where(speeds) : `at all ${speeds.length} speeds ${spokenSpan(speeds[0].slidingSpeed, speeds[speeds.length - 1].slidingSpeed)}`}; at the closest of them the pass is wrong with a probability of ${risk(speeds)}.`
    case 'fail': {
      const failed = speeds.filter((speed) => speed.verdict === 'fail')
      return `${about} fails: it does not keep to ${limit} ${where(failed)}.`
    }
    case 'cannotTell': {
      const open = speeds.filter((speed) => speed.verdict === 'cannotTell')
      const because = [
        open.length === 0 ? '' : `${where(open)} friction lies nearer to the limit than its uncertainty allows to tell`,
        lacking === '' ? '' : `nobody measured ${lacking}, or may believe it there`,
      ].filter((words) => words !== '')
      return `Nobody can tell whether ${about === sample ? sample : 'this mounting'} keeps to ${limit}: ${because.join('; ')}.`
    }
  }
}

/** The limit in words: `a friction of at most 0.12`. */
export function limitInWords({ lower, upper }: Tolerance): string {
  if (lower === null) return `a friction of at most ${upper}`
  return upper === null ? `a friction of at least ${lower}` : `a friction of ${lower} to ${upper}`
}

/** The rule in words, as it stands on a report. */
export function ruleInWords(rule: DecisionRule): string {
  const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 3, unit: '%' })
  switch (rule.kind) {
    case 'simple':
      return 'simple acceptance: the value decides, and the risk of a wrong verdict near the limit is up to 50 % (ILAC-G8:09/2019)'
    case 'guarded':
      return `guard band w = ${rule.factor === 1 ? '' : `${rule.factor} `}U at ${percent(rule.coverage)} on both sides of the limit; between them nobody can tell (ILAC-G8:09/2019; JCGM 106:2012)`
    case 'risk':
      return `a verdict where the probability of its being wrong is at most ${percent(rule.mostRisk)}; otherwise nobody can tell (JCGM 106:2012)`
  }
}
