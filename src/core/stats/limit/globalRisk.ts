import { integrate } from '../../numeric/index.ts'
import { normalCdf, normalDensity } from '../normal.ts'
import { checkedTolerance, conforms, type Tolerance } from './tolerance.ts'

/** Items of a kind that come to be measured, how well, and by which guard bands they are judged. */
export interface RiskSetting {
  /** What is known of such items before: normal about `mean`. */
  readonly prior: { readonly mean: number; readonly deviation: number }
  /** Of one measurement. */
  readonly standardUncertainty: number
  readonly tolerance: Tolerance
  readonly passGuard: number
  readonly failGuard: number
}

/** How often a rule goes wrong over all such items. */
export interface GlobalRisk {
  /** Passed though it does not conform: the risk of whoever uses it (JCGM 106:2012, 9.5.2). */
  readonly wrongPass: number
  /** Failed though it conforms: the risk of whoever made it. */
  readonly wrongFail: number
  readonly cannotTell: number
  /** Share of all items that do not conform. */
  readonly nonconforming: number
}

/** Global risks of a decision rule by integration over the items (JCGM 106:2012, 9.5), both distributions normal. */
export function globalRisk({
  prior,
  standardUncertainty: u,
  tolerance,
  passGuard,
  failGuard,
}: RiskSetting): GlobalRisk {
  checkedTolerance(tolerance)
  if (!(prior.deviation > 0 && u > 0)) {
    throw new RangeError(`deviation and uncertainty must be above zero, got ${prior.deviation} and ${u}`)
  }
  const reading = (ends: Tolerance) => (item: number) => {
    const upper = ends.upper === null ? 1 : normalCdf((ends.upper - item) / u)
    const lower = ends.lower === null ? 0 : normalCdf((ends.lower - item) / u)
    return Math.max(0, upper - lower)
  }
  const passes = reading(moved(tolerance, passGuard))
  const held = reading(moved(tolerance, -failGuard))
  const over = (f: (item: number) => number): number => overItems(f, { prior, tolerance, u })
  const good = (item: number): boolean => conforms(item, tolerance)
  return {
    wrongPass: over((item) => (good(item) ? 0 : passes(item))),
    wrongFail: over((item) => (good(item) ? 1 - held(item) : 0)),
    cannotTell: over((item) => Math.max(0, held(item) - passes(item))),
    nonconforming: over((item) => (good(item) ? 0 : 1)),
  }
}

const moved = ({ lower, upper }: Tolerance, by: number): Tolerance => ({
  lower: lower === null ? null : lower + by,
  upper: upper === null ? null : upper - by,
})

/** In pieces that end at the limits, where what is asked jumps, and close around them, where it bends. */
function overItems(
  f: (item: number) => number,
  { prior, tolerance, u }: { readonly prior: RiskSetting['prior']; readonly tolerance: Tolerance; readonly u: number },
): number {
  const { mean, deviation } = prior
  const edges = [mean - 9 * deviation, mean + 9 * deviation]
  const inner = [tolerance.lower, tolerance.upper].flatMap((end) =>
    end === null ? [] : [end - 6 * u, end, end + 6 * u],
  )
  const all = [...edges, ...inner.filter((edge) => edge > edges[0] && edge < edges[1])].sort((a, b) => a - b)
  let sum = 0
  for (let i = 1; i < all.length; i++) {
    sum += integrate((item) => (f(item) * normalDensity((item - mean) / deviation)) / deviation, [all[i - 1], all[i]], {
      relative: 1e-9,
      absolute: 1e-14,
    }).value
  }
  return sum
}
