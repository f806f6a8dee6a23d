import { residualOf } from './estimate/residualOf.ts'
import type { StepResult } from './estimate/stepResult.ts'
import { type RowContext, stepRows } from './estimate/stepRows.ts'
import type { SignalSource } from './signals.ts'

/** The last rows of a step as they came, where those of the estimate are averages. */
export interface UnaveragedTail {
  /** Residual of the step's fit in friction units, turn ripple taken off. */
  readonly residual: Float64Array
  readonly turns: number
}

/** Rows for each row behind an average: several cycles of every line that is too fast for the averages. */
const rowsPerAveraged = 64
const fewestRows = 1_024
const mostRows = 4_096

/** @param orders of the turns that the step's fit knows; undefined where the step has no estimate or no averages */
export function unaveragedTail(
  result: StepResult,
  orders: readonly number[],
  { source, kept, context }: { source: SignalSource; kept: number; context: RowContext },
): UnaveragedTail | undefined {
  const { step, block } = result.rows
  if (block === 1 || result.estimate === undefined) return undefined
  const count = Math.min(mostRows, Math.max(fewestRows, rowsPerAveraged * block))
  const rows = stepRows({ ...step, from: Math.max(kept, step.to - count) }, source, context)
  const { angle } = rows
  return {
    residual: residualOf({ ...result, rows, from: 0 }, orders),
    turns: Math.abs(angle[angle.length - 1] - angle[0]) / (2 * Math.PI),
  }
}
