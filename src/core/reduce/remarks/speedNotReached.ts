import { printQuantity } from '../../quantity/index.ts'
import type { Ratio, Remark } from '../../terms/index.ts'

/** The speed did not stay near any value: not one held speed. */
export function speedNotReached(
  seen: { settled: boolean; step: number; spread: Ratio },
  tolerance: Ratio,
): Remark | undefined {
  if (seen.settled) return undefined
  return {
    kind: 'speedNotReached',
    seen: seen.spread,
    limit: tolerance,
    unit: '',
    step: seen.step,
    sentence: `The speed still moved by ${printQuantity(seen.spread, 'ratio', { digits: 2 })} at the end of the step; it never settled to ±${printQuantity(tolerance, 'ratio')}.`,
    next: 'Lengthen the step, or have the record cut as a ramp (--segmentation ramp).',
  }
}
