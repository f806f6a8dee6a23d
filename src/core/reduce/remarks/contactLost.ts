import { printQuantity } from '../../quantity/index.ts'
import type { Remark } from '../../terms/index.ts'
import type { StepRows } from '../estimate/stepRows.ts'

/** Shortest run of rows under the share of the load that counts as lost contact. */
export const shortestLoss = 3

/** What a loss of contact is held against. */
export interface LossContext {
  readonly load: number
  readonly contactShare: number
  /** Rows of the whole step. */
  readonly stepRows: number
  readonly sampleInterval: number
}

/** The axial force fell under a share of the load for several rows running. */
export function contactLost(rows: StepRows, context: LossContext): Remark | undefined {
  if (rows.longestLoss.rows < shortestLoss) return undefined
  const share = rows.outOfContact / context.stepRows
  const limit = context.contactShare * context.load
  const force = (value: number) => printQuantity(value, 'force', { digits: 3 })
  const seconds = printQuantity(rows.longestLoss.rows * context.sampleInterval, 'time', { digits: 3 })
  return {
    kind: 'contactLost',
    seen: rows.lowestForce,
    limit,
    unit: 'N',
    step: rows.step.number,
    sentence:
      `The axial force fell to ${force(rows.lowestForce)}, under ${force(limit)}, for ${seconds} at a time ` +
      `and ${printQuantity(share, 'ratio', { digits: 3 })} of the step; those rows are left out.`,
    next: 'Look for a loose or tilted body and for a soft layer that gives way; measure this step again.',
  }
}
