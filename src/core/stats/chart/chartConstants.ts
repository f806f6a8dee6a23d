import { integrate } from '../../numeric/index.ts'
import { logGamma } from '../logGamma.ts'
import { normalCdf } from '../normal.ts'

/** Factors of control charts for samples of n normal values. */
export interface ChartConstants {
  /** Mean and standard deviation of the range over σ. */
  readonly d2: number
  readonly d3: number
  /** Mean of the standard deviation over σ. */
  readonly c4: number
  /** Limits of means from mean ranges and mean standard deviations. */
  readonly A2: number
  readonly A3: number
  /** Limits of ranges over their mean. */
  readonly D3: number
  readonly D4: number
  /** Limits of standard deviations over their mean. */
  readonly B3: number
  readonly B4: number
}

/**
 * Factors of Shewhart charts (ISO 7870-2:2013, table 2), by integration over the distribution of the range (Tippett 1925) to
 * nine digits. `count` is the size of a sample, 2 to 25.
 */
export function chartConstants(count: number): ChartConstants {
  if (!(Number.isInteger(count) && count >= 2 && count <= 25)) {
    throw new RangeError(`a sample on a chart has 2 to 25 values, got ${count}`)
  }
  const d2 = meanRange(count)
  const d3 = Math.sqrt(meanSquaredRange(count) - d2 * d2)
  const c4 = Math.sqrt(2 / (count - 1)) * Math.exp(logGamma(count / 2) - logGamma((count - 1) / 2))
  const spread = (3 / c4) * Math.sqrt(1 - c4 * c4)
  return {
    d2,
    d3,
    c4,
    A2: 3 / (d2 * Math.sqrt(count)),
    A3: 3 / (c4 * Math.sqrt(count)),
    D3: Math.max(0, 1 - (3 * d3) / d2),
    D4: 1 + (3 * d3) / d2,
    B3: Math.max(0, 1 - spread),
    B4: 1 + spread,
  }
}

/** Beyond this the normal distribution has nothing left for nine digits. */
const far = 8.5

/** E(R) = ∫ 1 − Φⁿ − (1 − Φ)ⁿ. */
const meanRange = (n: number): number =>
  integrate((x) => 1 - normalCdf(x) ** n - normalCdf(-x) ** n, [-far, far], { relative: 1e-11 }).value

/** E(R²) = 2 ∬_{x<y} 1 − Φ(y)ⁿ − (1 − Φ(x))ⁿ + (Φ(y) − Φ(x))ⁿ. */
function meanSquaredRange(n: number): number {
  const inner = (x: number): number => {
    const below = normalCdf(-x) ** n
    const at = normalCdf(x)
    return integrate((y) => 1 - normalCdf(y) ** n - below + (normalCdf(y) - at) ** n, [x, far], {
      relative: 1e-9,
      absolute: 1e-12,
    }).value
  }
  return 2 * integrate(inner, [-far, far], { relative: 1e-9 }).value
}
