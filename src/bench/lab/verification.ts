import type { Problem } from '../../core/terms/index.ts'
import type { KeptRecord, KeptResult } from '../../store/index.ts'
import type { Difference } from './resultDifferences.ts'

/** Something that is not as it was kept, or that does not come out again. */
export type Finding =
  /** Bytes or texts are not those that were kept; `records` are those that hang on them. */
  | { readonly what: 'damaged'; readonly problem: Problem; readonly records: readonly KeptRecord[] }
  /** This version of the program made it, and now makes other bytes. */
  | {
      readonly what: 'differs'
      readonly record: KeptRecord
      readonly result: KeptResult
      readonly differences: readonly Difference[]
    }
  /** Another version made it, and this one gives something else from the same bytes, setup and words. */
  | {
      readonly what: 'changed'
      readonly record: KeptRecord
      readonly result: KeptResult
      readonly differences: readonly Difference[]
      /** Whether the result of this version was kept beside it. */
      readonly keptBeside: boolean
    }
  /** It was computed once and cannot be computed now. */
  | { readonly what: 'notComputed'; readonly record: KeptRecord; readonly problems: readonly Problem[] }
  /** A mistake of ours. */
  | { readonly what: 'fault'; readonly record: KeptRecord; readonly message: string }

/** What `verify` looked at and found. */
export interface Verification {
  readonly where: string
  /** This version of the program. */
  readonly program: string
  readonly records: number
  readonly setups: number
  readonly results: number
  /** Results of this version that came out bit for bit. */
  readonly same: number
  /** Results of other versions from which this one differs in nothing but its own name. */
  readonly sameByOther: number
  /** Results of other versions beside which one of this version is kept: only their checksums were looked at. */
  readonly superseded: number
  /** Results of this version that were kept beside older ones. */
  readonly keptBeside: number
  /** Records that have no result with their setup. */
  readonly notReduced: readonly KeptRecord[]
  readonly findings: readonly Finding[]
}
