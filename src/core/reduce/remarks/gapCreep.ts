import { printQuantity } from '../../quantity/index.ts'
import type { Metre, Remark } from '../../terms/index.ts'

/** The gap moved during the step by more than run-out and noise explain. */
export function gapCreep(
  seen: { creep: Metre; runOut: Metre; uncertainty: Metre; step: number },
  limit: Metre,
): Remark | undefined {
  const size = Math.abs(seen.creep)
  if (!(size > limit + 2 * seen.runOut) || !(size > 3 * seen.uncertainty)) return undefined
  return {
    kind: 'gapCreep',
    seen: seen.creep,
    limit,
    unit: 'm',
    step: seen.step,
    sentence: `The gap moved by ${printQuantity(seen.creep, 'length', { digits: 3 })} during the step, more than ${printQuantity(limit, 'length')}: wear, creep of a soft body, or thermal growth.`,
    next: 'Look at the scar and at the temperature; a blank at constant temperature tells drift from wear.',
  }
}
