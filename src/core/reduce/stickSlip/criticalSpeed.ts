import type { MetrePerSecond } from '../../terms/index.ts'
import type { StepVibration } from './stepVibration.ts'

/** Between which two speeds of the record stick–slip ends. A bracket, not a 95 % interval: it is as narrow as the steps are close. */
export interface CriticalSpeedBracket {
  /** Fastest step that still sticks. */
  readonly sticks: MetrePerSecond
  /** Slowest step above that slides evenly; null where the record has none. */
  readonly slides: MetrePerSecond | null
  /** True where steps slower than `sticks` slide evenly. */
  readonly mixed: boolean
}

/** null where no step sticks. Steps that cannot be told are passed over. */
export function criticalSpeedBracket(steps: readonly StepVibration[]): CriticalSpeedBracket | null {
  const told = steps.filter(({ verdict }) => verdict !== 'cannotTell')
  const sticking = told.filter(({ verdict }) => verdict === 'stickSlip').map(({ slidingSpeed }) => slidingSpeed)
  if (sticking.length === 0) return null
  const even = told.filter(({ verdict }) => verdict !== 'stickSlip').map(({ slidingSpeed }) => slidingSpeed)
  const sticks = Math.max(...sticking)
  const above = even.filter((speed) => speed > sticks)
  return {
    sticks,
    slides: above.length === 0 ? null : Math.min(...above),
    mixed: even.some((speed) => speed > Math.min(...sticking) && speed < sticks),
  }
}
