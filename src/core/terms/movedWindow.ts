import type { Second } from './si.ts'

/**
 * A window that a person moved: the rows of this step from one time to another, both included, count as they are, whatever
 * the program would have cut as warm-up. Times are those of the record.
 */
export interface MovedWindow {
  /** Number of the step as in the record. */
  readonly step: number
  readonly from: Second
  readonly to: Second
}
