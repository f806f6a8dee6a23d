import type { MetrePerSecond, Newton } from '../../core/terms/index.ts'
import type { Words } from '../sheet.ts'
import type { FigureLimit } from './limitKey.ts'

/** The window over speed and load: where friction can be measured, what forbids the rest, and what is planned. */
export interface LoadWindowData extends Words {
  /** Both rise evenly in the logarithm. */
  readonly speeds: ArrayLike<MetrePerSecond>
  readonly loads: ArrayLike<Newton>
  /** Cell (speed i, load j) at `j·speeds + i`: 0 where friction can be measured, else one more than the place in `limits`. */
  readonly cells: ArrayLike<number>
  readonly limits: readonly FigureLimit[]
  /** The load of the plan and its steps; null where nothing can be planned. */
  readonly planned: { readonly load: Newton; readonly steps: readonly MetrePerSecond[] } | null
}
