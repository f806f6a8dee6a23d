import type { LoopPoint } from './branches.ts'

/** What two points at one speed say of each other, before it is told. */
export interface PairSeen {
  readonly up: LoopPoint
  readonly down: LoopPoint
  readonly speed: number
  readonly difference: number
  /** Own standard uncertainty of the difference and its degrees of freedom. */
  readonly own: number
  readonly freedom: number
  /** What up and down share and that does not cancel. */
  readonly shared: number
}
