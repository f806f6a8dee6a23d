import type { Curve, Origin, ReduceOptions, Reduction, Remark, Setup } from '../core/terms/index.ts'
import type { RawRecord } from '../io/index.ts'
import type { BudgetShare } from './sharedBudget.ts'

/** One record all the way: what was read, what it became, what it was made from. */
export interface ReducedRecord {
  /** Name of the file without its folder, so that results do not depend on where the file lay. */
  readonly file: string
  readonly read: Pick<RawRecord, 'rows' | 'columns' | 'dialect' | 'preamble'>
  readonly setup: Setup
  /** Every option of the reduction as it was used, defaults included. */
  readonly options: ReduceOptions
  readonly reduction: Reduction
  /** null where no curve was asked for. */
  readonly curve: Curve | null
  readonly budget: readonly BudgetShare[]
  /** Findings on the whole record: from reading, reducing and fitting. */
  readonly remarks: readonly Remark[]
  readonly origin: Origin
}
