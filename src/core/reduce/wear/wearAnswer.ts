import type { Interval, Remark, SharedSource } from '../../terms/index.ts'
import type { GapWear } from './gapWear.ts'
import type { MovedByWear } from './movedByWear.ts'
import type { PressureStep } from './pressureHistory.ts'
import type { ScarWear } from './scarWear.ts'
import type { SlidHistory } from './slidHistory.ts'
import type { TrackWear } from './trackWear.ts'
import type { SunkWear } from './wornBodies.ts'

/** A specific wear rate in m³/(N·m) with its own interval, and what moves all rates of this rig together (relative, standard). */
export interface WearRate {
  readonly of: 'balls' | 'track' | 'gap'
  readonly rate: Interval
  readonly shared: Readonly<Partial<Record<SharedSource, number>>>
}

/** Wear of a record: what was lost, how fast, and what that did to the pressure. */
export interface RecordWear {
  readonly slid: SlidHistory
  readonly balls: ScarWear | null
  readonly track: TrackWear | null
  readonly gap: (GapWear & { readonly asIfBalls: SunkWear }) | null
  readonly rates: readonly WearRate[]
  readonly pressure: readonly PressureStep[]
  /** What the pressure rests on: scars that were read, or the gap as if the upper bodies alone had worn. */
  readonly pressureFrom: 'scars' | 'gap' | null
  readonly moved: MovedByWear
  readonly sentences: readonly string[]
  readonly remarks: readonly Remark[]
}
