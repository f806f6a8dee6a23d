import { deviationsOf } from './deviations.ts'
import { studentTQuantile } from './studentT.ts'

/** One step of the procedure: the value that lies furthest out, its statistic, and the value that it was held against. */
export interface EsdStep {
  /** Index in the values as they were given. */
  readonly at: number
  readonly statistic: number
  readonly critical: number
}

/** Up to `most` outliers in values that are otherwise normal. */
export interface GeneralisedEsd {
  readonly steps: readonly EsdStep[]
  /** Number of outliers: the last step whose statistic exceeds its critical value. Earlier ones may hide behind it. */
  readonly outliers: number
}

/** Generalised extreme studentized deviate test (Rosner 1983, Technometrics 25:165). */
export function generalisedEsd(values: readonly number[], most: number, significance = 0.05): GeneralisedEsd {
  if (!(Number.isInteger(most) && most >= 1 && most <= values.length - 2)) {
    throw new RangeError(`most must be a whole number from 1 to ${values.length - 2}, got ${most}`)
  }
  let left = values.map((_, i) => i)
  const steps: EsdStep[] = []
  while (steps.length < most) {
    const { deviations } = deviationsOf(left.map((i) => values[i]))
    const squares = deviations.reduce((sum, d) => sum + d * d, 0)
    if (!(squares > 0)) break
    const sizes = [...deviations].map(Math.abs)
    const furthest = sizes.indexOf(Math.max(...sizes))
    const count = left.length
    const t = studentTQuantile(1 - significance / (2 * count), count - 2)
    steps.push({
      at: left[furthest],
      statistic: sizes[furthest] / Math.sqrt(squares / (count - 1)),
      critical: ((count - 1) * t) / Math.sqrt((count - 2 + t * t) * count),
    })
    left = left.filter((_, i) => i !== furthest)
  }
  return { steps, outliers: steps.findLastIndex(({ statistic, critical }) => statistic > critical) + 1 }
}
