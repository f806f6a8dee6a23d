import { studentTQuantile } from '../../stats/index.ts'
import type { Bounded } from '../../terms/index.ts'

/** A straight line through a few records, all weighed alike: what scatters is the record, not its own noise. */
export interface StraightLine {
  readonly slope: Bounded
  readonly intercept: Bounded
  /** Standard deviation about the line; 0 with two records. */
  readonly deviation: number
  readonly sxx: number
  readonly residualSquares: number
}

/** Least squares with Student's t; with two records there is a line but no interval. Undefined where x does not vary. */
export function straightLine(x: readonly number[], y: readonly number[]): StraightLine | undefined {
  const n = x.length
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / n
  const [mx, my] = [mean(x), mean(y)]
  const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0)
  if (n < 2 || !(sxx > 1e-12 * (mx * mx + 1e-300))) return undefined
  const slope = x.reduce((sum, value, i) => sum + (value - mx) * (y[i] - my), 0) / sxx
  const intercept = my - slope * mx
  const residualSquares = x.reduce((sum, value, i) => sum + (y[i] - intercept - slope * value) ** 2, 0)
  if (n === 2) {
    const open = (value: number): Bounded => ({ value, low: null, high: null })
    return { slope: open(slope), intercept: open(intercept), deviation: 0, sxx, residualSquares }
  }
  const deviation = Math.sqrt(residualSquares / (n - 2))
  const t = studentTQuantile(0.975, n - 2)
  const around = (value: number, unit: number): Bounded => {
    const reach = t * deviation * Math.sqrt(unit)
    return { value, low: value - reach, high: value + reach }
  }
  return {
    slope: around(slope, 1 / sxx),
    intercept: around(intercept, 1 / n + (mx * mx) / sxx),
    deviation,
    sxx,
    residualSquares,
  }
}
