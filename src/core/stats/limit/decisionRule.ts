/**
 * How a verdict is drawn from a value and its uncertainty; whoever uses the verdict chooses (ILAC-G8:09/2019, clause 4; JCGM
 * 106:2012, clause 8; clauses from memory).
 *
 * `simple`: the value itself decides, and the risk is shared. `guarded`: pass only within limits moved inwards by w = factor·U, fail only
 * beyond limits moved outwards by as much, between them nobody can tell; factor 1 is w = U. `risk`: pass where the probability
 * of lying outside is at most `mostRisk`, fail where that of lying inside is.
 */
export type DecisionRule =
  | { readonly kind: 'simple' }
  | { readonly kind: 'guarded'; readonly factor: number; readonly coverage: number }
  | { readonly kind: 'risk'; readonly mostRisk: number }

/** w = U at 95 %, which leaves at most 2.5 % risk of a wrong pass. */
export const usualRule: DecisionRule = { kind: 'guarded', factor: 1, coverage: 0.95 }

/** Throws RangeError for a rule that cannot be. */
export function checkedRule(rule: DecisionRule): DecisionRule {
  if (rule.kind === 'guarded' && !(rule.factor >= 0 && rule.factor <= 10 && rule.coverage > 0 && rule.coverage < 1)) {
    throw new RangeError(
      `a guard band needs a factor of 0 to 10 and a coverage, got ${rule.factor} and ${rule.coverage}`,
    )
  }
  if (rule.kind === 'risk' && !(rule.mostRisk > 0 && rule.mostRisk < 0.5)) {
    throw new RangeError(`risk must be between 0 and 0.5, got ${rule.mostRisk}`)
  }
  return rule
}
