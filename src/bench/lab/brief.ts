import { type RemarkKind, remarkKinds, remarkWords } from '../../core/terms/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'

/** What became of a record, in a few numbers: for one line in a list. */
export interface Brief {
  readonly points: number
  /** Points that the curve may use. */
  readonly trusted: number
  /** Speeds that may be believed, m/s; null where none can. */
  readonly low: number | null
  readonly high: number | null
  /** Kinds of remark on a value that must not be used as it is. */
  readonly stops: readonly RemarkKind[]
  /** How many other kinds of remark there are that ask for care. */
  readonly cautions: number
}

export function briefOf({ reduction, remarks }: Pick<ReducedRecord, 'reduction' | 'remarks'>): Brief {
  const { points, window } = reduction
  const found = new Set([...points.flatMap((point) => point.remarks), ...remarks].map(({ kind }) => kind))
  const ofWeight = (weight: string): RemarkKind[] =>
    remarkKinds.filter((kind) => found.has(kind) && remarkWords[kind].weight === weight)
  return {
    points: points.length,
    trusted: points.filter(({ trusted }) => trusted).length,
    low: window.low,
    high: window.high,
    stops: ofWeight('stops'),
    cautions: ofWeight('caution').length,
  }
}
