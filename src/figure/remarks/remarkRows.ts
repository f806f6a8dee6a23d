import {
  type Point,
  type Remark,
  type RemarkKind,
  type RemarkWeight,
  remarkKinds,
  remarkWords,
} from '../../core/terms/index.ts'
import { type Sign, signsOf } from '../signs.ts'

/** A remark on a point that has it. */
export interface RemarkAt {
  readonly point: Point
  readonly remark: Remark
}

/** One kind of remark on the steps of a curve. */
export interface StepRow {
  readonly sign: Sign
  readonly found: readonly RemarkAt[]
}

/** One kind of remark on the record as a whole. */
export interface RecordRow {
  readonly kind: RemarkKind
  readonly weight: RemarkWeight
  readonly remark: Remark
  readonly more: number
}

/** Rows for the remarks on steps, in the order and with the letters of the curve figure. */
export const stepRows = (points: readonly Point[]): readonly StepRow[] =>
  signsOf(points).map((sign) => ({
    sign,
    found: points.flatMap((point) =>
      point.remarks.filter(({ kind }) => kind === sign.kind).map((remark) => ({ point, remark })),
    ),
  }))

const weights: readonly RemarkWeight[] = ['stops', 'caution', 'note']

/** Rows for the remarks on the record, heaviest first. Remarks that name a step belong to the points and are left out. */
export function recordRows(remarks: readonly Remark[]): readonly RecordRow[] {
  const whole = remarks.filter(({ step }) => step === undefined)
  return weights.flatMap((weight) =>
    remarkKinds
      .filter((kind) => remarkWords[kind].weight === weight)
      .flatMap((kind) => {
        const [remark, ...others] = whole.filter((one) => one.kind === kind)
        return remark === undefined ? [] : [{ kind, weight, remark, more: others.length }]
      }),
  )
}
