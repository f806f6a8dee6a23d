import { fromSi, printQuantity, readableUnit } from '../quantity/index.ts'
import type { MetrePerSecond, Ratio } from '../terms/index.ts'

const digits = 2

/** A speed with two digits and its unit. */
export const spokenSpeed = (speed: MetrePerSecond): string => printQuantity(speed, 'velocity', { digits })

/** `from 2 to 60 mm/s`; the unit once where both have it. */
export function spokenSpan(from: MetrePerSecond, to: MetrePerSecond): string {
  const unit = readableUnit(to, 'velocity')
  const low = fromSi(from, unit)
  if (low < 0.1) return `from ${spokenSpeed(from)} to ${spokenSpeed(to)}`
  return `from ${Number(low.toPrecision(digits))} to ${spokenSpeed(to)}`
}

/** A share in per cent, to a tenth below ten. */
export const spokenShare = (share: Ratio): string => `${percentNumber(share)} %`

/** `9 to 15 %`; one number where both round to the same. */
export function spokenShares(least: Ratio, most: Ratio): string {
  const [low, high] = [percentNumber(least), percentNumber(most)]
  return low === high ? `${low} %` : `${low} to ${high} %`
}

function percentNumber(share: Ratio): string {
  const percent = 100 * share
  return Math.abs(percent) < 9.95 ? String(Number(percent.toFixed(1))) : percent.toFixed(0)
}
