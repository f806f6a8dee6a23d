import { studentTQuantile } from '../studentT.ts'
import { type Assessed, conformanceProbability } from './conformance.ts'
import { checkedRule, type DecisionRule } from './decisionRule.ts'
import { checkedTolerance, conforms, type Tolerance } from './tolerance.ts'

/** What can be said about a value against a limit. */
export type LimitVerdict = 'pass' | 'fail' | 'cannotTell'

/** One value judged. */
export interface LimitJudgement {
  readonly verdict: LimitVerdict
  /** That the true value keeps to the limit. */
  readonly conformance: number
  /** That this verdict is wrong: the specific risk (JCGM 106:2012, 3.3.13 to 3.3.16). Null where there is no verdict. */
  readonly wrong: number | null
  /** Width of the guard band for a pass and for a fail. */
  readonly passGuard: number
  readonly failGuard: number
}

/**
 * Judges one value. `speeds` is how many values are looked at for any fail: the guard against a wrong fail widens with it (Šidák
 * 1967), as one of many is beyond its interval more easily. A pass of all needs no such care: each has to pass.
 */
export function judgeLimit(
  assessed: Assessed,
  {
    tolerance,
    rule,
    speeds = 1,
  }: { readonly tolerance: Tolerance; readonly rule: DecisionRule; readonly speeds?: number },
): LimitJudgement {
  checkedTolerance(tolerance)
  checkedRule(rule)
  if (!(Number.isInteger(speeds) && speeds >= 1))
    throw new RangeError(`speeds must be a whole number from 1, got ${speeds}`)
  const conformance = conformanceProbability(assessed, tolerance)
  const guard = guardsOf(assessed, rule, speeds)
  const verdict = verdictOf(assessed, { tolerance, rule, conformance, speeds, ...guard })
  const wrong = { pass: 1 - conformance, fail: conformance, cannotTell: null }[verdict]
  return { verdict, conformance, wrong, ...guard }
}

function guardsOf(
  { standardUncertainty: u, degreesOfFreedom = Number.POSITIVE_INFINITY }: Assessed,
  rule: DecisionRule,
  speeds: number,
): { readonly passGuard: number; readonly failGuard: number } {
  switch (rule.kind) {
    case 'simple':
      return { passGuard: 0, failGuard: 0 }
    case 'guarded': {
      const factor = (coverage: number): number =>
        rule.factor * studentTQuantile((1 + coverage) / 2, degreesOfFreedom) * u
      return { passGuard: factor(rule.coverage), failGuard: factor(rule.coverage ** (1 / speeds)) }
    }
    case 'risk':
      return {
        passGuard: studentTQuantile(1 - rule.mostRisk, degreesOfFreedom) * u,
        failGuard: studentTQuantile((1 - rule.mostRisk) ** (1 / speeds), degreesOfFreedom) * u,
      }
  }
}

interface Judging {
  readonly tolerance: Tolerance
  readonly rule: DecisionRule
  readonly conformance: number
  readonly speeds: number
  readonly passGuard: number
  readonly failGuard: number
}

function verdictOf({ value }: Assessed, judging: Judging): LimitVerdict {
  const { tolerance, rule, conformance, speeds, passGuard, failGuard } = judging
  if (rule.kind === 'risk') {
    // By the probabilities themselves, which know both sides at once.
    if (1 - conformance <= rule.mostRisk) return 'pass'
    return conformance <= 1 - (1 - rule.mostRisk) ** (1 / speeds) ? 'fail' : 'cannotTell'
  }
  const moved = (by: number): Tolerance => ({
    lower: tolerance.lower === null ? null : tolerance.lower + by,
    upper: tolerance.upper === null ? null : tolerance.upper - by,
  })
  if (conforms(value, moved(passGuard))) return 'pass'
  return conforms(value, moved(-failGuard)) ? 'cannotTell' : 'fail'
}

/** All of them pass: pass. Any fails: fail. Otherwise nobody can tell. Throws RangeError without any. */
export function verdictOfAll(verdicts: readonly LimitVerdict[]): LimitVerdict {
  if (verdicts.length === 0) throw new RangeError('a verdict needs at least one speed, got none')
  if (verdicts.includes('fail')) return 'fail'
  return verdicts.every((verdict) => verdict === 'pass') ? 'pass' : 'cannotTell'
}
