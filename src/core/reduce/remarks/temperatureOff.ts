import { printQuantity } from '../../quantity/index.ts'
import type { Kelvin, Remark } from '../../terms/index.ts'

/** Mean temperature of a step away from the commanded one. */
export function temperatureOff(
  seen: { temperature: Kelvin | null; step: number },
  target: Kelvin | undefined,
  tolerance: Kelvin,
): Remark | undefined {
  if (target === undefined || seen.temperature === null) return undefined
  const off = Math.abs(seen.temperature - target)
  if (!(off > tolerance)) return undefined
  return {
    kind: 'temperatureOff',
    seen: off,
    limit: tolerance,
    unit: 'K',
    step: seen.step,
    sentence: `The temperature was ${printQuantity(seen.temperature, 'temperature')} where ${printQuantity(target, 'temperature')} was asked for.`,
    next: 'Wait longer before the sweep; viscosity and gap move with temperature.',
  }
}
