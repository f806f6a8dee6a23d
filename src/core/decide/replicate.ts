import type { MetrePerSecond, Ratio, SharedSource } from '../terms/index.ts'

/** One step of a replicate, as far as a comparison needs it. */
export interface ReplicatePoint {
  readonly slidingSpeed: MetrePerSecond
  /** Above zero. */
  readonly friction: number
  /** Own standard uncertainty, in friction; 0 where nobody knows it. */
  readonly own: number
  /** Standard uncertainties of the shared sources, as shares of friction. */
  readonly shared: Readonly<Partial<Record<SharedSource, Ratio>>>
}

/** What replicates may have in common beside their sample; null where nobody said. */
export interface ReplicateBlocks {
  readonly day: string | null
  readonly operator: string | null
  readonly ballSet: string | null
}

/** One mounting with fresh surfaces, and what it gave. */
export interface Replicate {
  /** Stable name by which a person takes it out. */
  readonly record: string
  readonly name: string
  readonly sample: string
  /** Trusted points only. */
  readonly points: readonly ReplicatePoint[]
  /** Speeds that its record may be believed at. */
  readonly window: { readonly low: MetrePerSecond | null; readonly high: MetrePerSecond | null }
  /** Equal for records of one rig, and of one fixture on any rig. */
  readonly rig: string
  readonly fixture: string
  readonly blocks: ReplicateBlocks
}
