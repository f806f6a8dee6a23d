import { expect } from 'vitest'
import type { Outcome } from '../../../src/core/terms/index.ts'

/** Relative agreement; what is wanted as zero must be zero. */
export const near = (seen: number, want: number, within: number): void =>
  expect(want === 0 ? Math.abs(seen) : Math.abs(seen / want - 1), `${seen} for ${want}`).toBeLessThanOrEqual(within)

/** The value of an outcome that must have gone well. */
export function good<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

/** The problems of an outcome that must have failed, each as one line of kind, what and mend. */
export function problemsOf<T>(outcome: Outcome<T>): readonly string[] {
  if (outcome.ok) throw new Error(`went well: ${JSON.stringify(outcome.value)}`)
  return outcome.problems.map(({ kind, what, mend }) => `${kind}: ${what} ${mend}`)
}

/** 0 °C in K. */
export const zero = 273.15
