import { printQuantity } from '../../quantity/index.ts'
import type { Newton, Ratio, Remark } from '../../terms/index.ts'

/** Mean axial force away from the commanded one by more than a share. */
export function forceOffTarget(
  seen: { force: Newton; step: number },
  target: Newton | undefined,
  tolerance: Ratio,
): Remark | undefined {
  if (target === undefined) return undefined
  const off = Math.abs(seen.force - target) / target
  if (!(off > tolerance)) return undefined
  const force = (value: number) => printQuantity(value, 'force', { digits: 4 })
  return {
    kind: 'forceOffTarget',
    seen: off,
    limit: tolerance,
    unit: '',
    step: seen.step,
    sentence: `The axial force held ${force(seen.force)} where ${force(target)} was asked for, ${printQuantity(off, 'ratio', { digits: 2 })} off.`,
    next: 'Check the force control and the force zero; friction is computed with the force that was read.',
  }
}
